package dapple.archive;

import java.io.IOException;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.sql.Types;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Puts the rows of an archive into empty tables, some hundred at once. */
final class TableLoading {
    private static final int ROWS_AT_ONCE = 500;
    private static final int BATCHES_AT_ONCE = 20;
    private static final String HISTORY = "_history";

    private final Connection connection;
    private final ArchiveFile archive;

    TableLoading(Connection connection, ArchiveFile archive) {
        this.connection = connection;
        this.archive = archive;
    }

    /** Loads a table and commits it. @return how many rows it has */
    long load(StoredTable table) throws SQLException, IOException {
        for (StoredTable.OwnReference reference : table.ownReferences()) {
            execute("alter table " + table.name() + " drop constraint " + reference.constraint());
        }
        long rows = loadRows(table);
        for (StoredTable.OwnReference reference : table.ownReferences()) {
            execute("alter table " + table.name() + " add constraint " + reference.constraint() + " foreign key ("
                    + reference.column() + ") references " + table.name() + " (" + reference.target() + ")");
        }
        connection.commit();
        return rows;
    }

    private long loadRows(StoredTable table) throws SQLException, IOException {
        try (TableRows rows = new TableRows(archive.content(table.entryName()));
                PreparedStatement insertion = connection.prepareStatement(insertion(table))) {
            if (!rows.columns().equals(table.columnNames())) {
                throw new ArchiveRefusedException(ArchiveFault.UNFIT, "columns of " + table.name() + " differ");
            }
            return loadRows(table.columns(), rows, insertion);
        }
    }

    private long loadRows(List<TableColumn> columns, TableRows rows, PreparedStatement insertion)
            throws SQLException, IOException {
        long loaded = 0;
        while (rows.hasNext()) {
            bind(columns, rows.next(), insertion);
            insertion.addBatch();
            loaded++;
            if (loaded % ROWS_AT_ONCE == 0) {
                insertion.executeBatch();
            }
            if (loaded % (ROWS_AT_ONCE * BATCHES_AT_ONCE) == 0) {
                connection.commit();
            }
        }
        insertion.executeBatch();
        return loaded;
    }

    private void bind(List<TableColumn> columns, String[] cells, PreparedStatement to)
            throws SQLException, IOException {
        for (int place = 0; place < cells.length; place++) {
            TableColumn column = columns.get(place);
            if (cells[place].equals(TableRows.NOTHING)) {
                to.setNull(place + 1, Types.NULL);
            } else if (column.isFile()) {
                to.setBytes(place + 1, archive.bytes(cells[place]));
            } else {
                column.kind().bind(to, place + 1, cells[place]);
            }
        }
    }

    private static String insertion(StoredTable table) {
        String places = table.columns().stream().map(column -> "?").collect(Collectors.joining(", "));
        return "insert into " + table.name() + " (" + String.join(", ", table.columnNames()) + ") values (" + places
                + ")";
    }

    /** What counts itself up goes on after the highest number that is in use, or that a history remembers. */
    void countOn(StoredTable table, Set<String> tables) throws SQLException {
        for (TableColumn column : table.columns()) {
            if (column.isCounted()) {
                long highest = highest(table.name(), column.name());
                String history = table.name() + HISTORY;
                if (tables.contains(history)) {
                    highest = Math.max(highest, highest(history, column.name()));
                }
                execute("alter table " + table.name() + " alter column " + column.name() + " restart with "
                        + (highest + 1));
            }
        }
    }

    /** The histories' own numbers come from a sequence. */
    void countRevisionsOn() throws SQLException {
        execute("alter sequence revision_seq restart with " + (highest("revision", "id") + 1));
    }

    private long highest(String table, String column) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery("select coalesce(max(" + column + "), 0) from " + table)) {
            row.next();
            return row.getLong(1);
        }
    }

    private void execute(String sql) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.execute(sql);
        }
    }
}
