package dapple.archive;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import de.siegmar.fastcsv.writer.QuoteStrategies;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Writes the rows of tables, in the order of their keys and a few at a time: RFC 4180, UTF-8, names in the first row. What
 * is null stands there unquoted and empty; an empty text is quoted.
 */
final class TableWriting {
    private static final int ROWS_AT_ONCE = 1000;

    private final Connection connection;
    private final SummedZip zip;
    private final ArchiveScope scope;

    TableWriting(Connection connection, SummedZip zip, ArchiveScope scope) {
        this.connection = connection;
        this.zip = zip;
        this.scope = scope;
    }

    /** Writes a table, and what of it is kept beside it. @return how many rows it has */
    long write(StoredTable table) throws IOException, SQLException {
        long[] rows = {0};
        try (PreparedStatement query = query(cells(table), table);
                ResultSet found = query.executeQuery()) {
            zip.entry(table.entryName(), to -> rows[0] = writeRows(table, found, to));
        }
        for (TableColumn column : table.files()) {
            writeFiles(table, column);
        }
        return rows[0];
    }

    /** Of what is kept beside the table it is asked only whether it is there. */
    private static String cells(StoredTable table) {
        return table.columns().stream()
                .map(column -> column.isFile() ? "t." + column.name() + " is not null" : "t." + column.name())
                .collect(Collectors.joining(", "));
    }

    private PreparedStatement query(String what, StoredTable table) throws SQLException {
        String order = table.key().isEmpty() ? "" : " order by " + table.keyList();
        PreparedStatement query =
                connection.prepareStatement("select " + what + " from " + table.name() + " t" + where(table) + order);
        query.setFetchSize(ROWS_AT_ONCE);
        return query;
    }

    private String where(StoredTable table) {
        return scope instanceof ArchiveScope.Year year ? " where " + YearRules.where(table.name(), year.span()) : "";
    }

    private long writeRows(StoredTable table, ResultSet found, OutputStream to) throws IOException {
        CsvWriter csv = CsvWriter.builder()
                .quoteStrategy(QuoteStrategies.EMPTY)
                .lineDelimiter(LineDelimiter.CRLF)
                .build(to, StandardCharsets.UTF_8);
        csv.writeRecord(table.columnNames());
        long rows = 0;
        try {
            List<Integer> keys = keyPlaces(table);
            @Nullable String[] cells = new String[table.columns().size()];
            for (; found.next(); rows++) {
                fill(cells, table, found, keys);
                csv.writeRecord(Collections.unmodifiableList(Arrays.asList(cells)));
            }
        } catch (SQLException cause) {
            throw new IOException("the table " + table.name() + " cannot be read", cause);
        }
        csv.flush();
        return rows;
    }

    private static List<Integer> keyPlaces(StoredTable table) {
        return table.key().stream()
                .map(name -> table.columnNames().indexOf(name) + 1)
                .toList();
    }

    private void fill(@Nullable String[] cells, StoredTable table, ResultSet found, List<Integer> keys)
            throws SQLException {
        for (int place = 1; place <= cells.length; place++) {
            TableColumn column = table.columns().get(place - 1);
            if (column.isFile()) {
                cells[place - 1] = found.getBoolean(place) ? fileName(table, column, key(found, keys)) : null;
            } else if (isSecret(table, column)) {
                cells[place - 1] = Secrets.instead(table.name(), column.name()).orElse(null);
            } else {
                cells[place - 1] = column.kind().read(found, place);
            }
        }
    }

    private boolean isSecret(StoredTable table, TableColumn column) {
        return scope instanceof ArchiveScope.Year && Secrets.isSecret(table.name(), column.name());
    }

    private static String key(ResultSet found, List<Integer> places) throws SQLException {
        List<String> parts = new ArrayList<>();
        for (int place : places) {
            parts.add(found.getString(place));
        }
        return String.join("-", parts);
    }

    private static String fileName(StoredTable table, TableColumn column, String key) {
        return "files/" + table.name() + "-" + column.name() + "/" + key;
    }

    private void writeFiles(StoredTable table, TableColumn column) throws IOException, SQLException {
        try (PreparedStatement query = query(table.keyList() + ", t." + column.name(), table);
                ResultSet found = query.executeQuery()) {
            int last = table.key().size() + 1;
            List<Integer> keys = IntStream.range(1, last).boxed().toList();
            while (found.next()) {
                byte[] content = found.getBytes(last);
                if (content != null) {
                    zip.entry(fileName(table, column, key(found, keys)), to -> to.write(content));
                }
            }
        }
    }
}
