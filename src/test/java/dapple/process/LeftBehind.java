package dapple.process;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;

/**
 * What a program that has ended left in its database file.
 *
 * @param entryKeys of all readings, as often as they occur, in the order in which they were stored
 * @param unjudged readings without a verdict: halves of a transaction
 */
public record LeftBehind(List<String> entryKeys, long unjudged) {
    private static final String FILE = "dapple.mv.db";

    /** Looks at a copy: opening the file itself would mend what the program has to mend when it starts again. */
    public static LeftBehind in(Path data, Path scratch) throws IOException, SQLException {
        Path copy = Files.createTempDirectory(scratch, "copy");
        Files.copy(data.resolve(FILE), copy.resolve(FILE));
        String url = "jdbc:h2:file:" + copy.resolve("dapple") + ";IFEXISTS=TRUE";
        try (Connection connection = DriverManager.getConnection(url, "", "");
                Statement statement = connection.createStatement()) {
            return new LeftBehind(entryKeys(statement), unjudged(statement));
        }
    }

    private static List<String> entryKeys(Statement statement) throws SQLException {
        List<String> keys = new ArrayList<>();
        try (ResultSet rows = statement.executeQuery("select cast(entry_key as varchar) from reading order by id")) {
            while (rows.next()) {
                keys.add(rows.getString(1));
            }
        }
        return keys;
    }

    private static long unjudged(Statement statement) throws SQLException {
        String query = "select count(*) from reading r "
                + "where not exists (select 1 from verdict v where v.reading_id = r.id)";
        try (ResultSet row = statement.executeQuery(query)) {
            row.next();
            return row.getLong(1);
        }
    }
}
