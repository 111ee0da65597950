package dapple.archive;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;

/** All rows of all tables of a database, cell by cell, as texts that can be compared. */
final class Contents {
    private Contents() {}

    static Map<String, List<String>> of(DataSource database) throws SQLException {
        Map<String, List<String>> contents = new TreeMap<>();
        try (Connection connection = database.getConnection()) {
            for (StoredTable table : StoredTables.of(connection)) {
                contents.put(table.name(), rows(connection, table));
            }
        }
        return contents;
    }

    static Map<String, Long> counts(DataSource database) throws SQLException {
        Map<String, Long> counts = new TreeMap<>();
        of(database).forEach((table, rows) -> counts.put(table, (long) rows.size()));
        return counts;
    }

    private static List<String> rows(Connection connection, StoredTable table) throws SQLException {
        List<String> rows = new ArrayList<>();
        String query = "select " + String.join(", ", table.columnNames()) + " from " + table.name() + " t order by "
                + table.keyList();
        try (Statement statement = connection.createStatement();
                ResultSet found = statement.executeQuery(query)) {
            while (found.next()) {
                rows.add(row(table, found));
            }
        }
        return rows;
    }

    private static String row(StoredTable table, ResultSet found) throws SQLException {
        StringBuilder row = new StringBuilder();
        for (int place = 1; place <= table.columns().size(); place++) {
            TableColumn column = table.columns().get(place - 1);
            row.append(column.name())
                    .append('=')
                    .append(cell(column, found, place))
                    .append('|');
        }
        return row.toString();
    }

    private static @Nullable String cell(TableColumn column, ResultSet found, int place) throws SQLException {
        if (column.isFile()) {
            byte[] content = found.getBytes(place);
            return content == null ? null : HexFormat.of().formatHex(content);
        }
        String cell = column.kind().read(found, place);
        return cell == null ? null : '\'' + cell + '\'';
    }
}
