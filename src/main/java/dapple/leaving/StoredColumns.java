package dapple.leaving;

import java.sql.Connection;
import java.sql.DatabaseMetaData;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.springframework.jdbc.core.ConnectionCallback;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;

/** Reads from the database which columns it has, so that a table that is new is not forgotten. */
@Component
class StoredColumns {
    private static final String MIGRATIONS = "flyway_schema_history";
    private static final Set<Integer> TEXTS =
            Set.of(Types.CHAR, Types.VARCHAR, Types.LONGVARCHAR, Types.CLOB, Types.NCHAR, Types.NVARCHAR);

    private final JdbcTemplate database;

    StoredColumns(JdbcTemplate database) {
        this.database = database;
    }

    /** All columns of a table, in its order. */
    List<StoredColumn> of(String table) {
        return all().stream().filter(column -> column.table().equals(table)).toList();
    }

    List<StoredColumn> texts() {
        return all().stream().filter(StoredColumn::isText).toList();
    }

    /** Those that name a person by the id, and the ids in the account's own history. */
    List<StoredColumn> ofPeople() {
        Set<String> named = new HashSet<>(asked(StoredColumns::namingPeople));
        return all().stream()
                .filter(column -> named.contains(column.table() + "." + column.name())
                        || column.name().endsWith("person_id")
                        || isOwnHistory(column))
                .toList();
    }

    private static boolean isOwnHistory(StoredColumn column) {
        return column.table().equals("person_history") && column.name().equals("id");
    }

    private List<StoredColumn> all() {
        return asked(StoredColumns::columns);
    }

    private <T> List<T> asked(Question<T> question) {
        ConnectionCallback<List<T>> callback = question::ask;
        List<T> answer = database.execute(callback);
        return answer == null ? List.of() : answer;
    }

    private static List<StoredColumn> columns(Connection connection) throws SQLException {
        DatabaseMetaData facts = connection.getMetaData();
        Set<String> tables = tables(facts, connection.getSchema());
        List<StoredColumn> columns = new ArrayList<>();
        try (ResultSet rows = facts.getColumns(null, connection.getSchema(), null, null)) {
            while (rows.next()) {
                String table = lower(rows.getString("TABLE_NAME"));
                if (tables.contains(table)) {
                    columns.add(column(table, rows));
                }
            }
        }
        return List.copyOf(columns);
    }

    private static StoredColumn column(String table, ResultSet row) throws SQLException {
        boolean isText = TEXTS.contains(row.getInt("DATA_TYPE"));
        return new StoredColumn(table, lower(row.getString("COLUMN_NAME")), isText, row.getInt("COLUMN_SIZE"));
    }

    private static Set<String> tables(DatabaseMetaData facts, String schema) throws SQLException {
        Set<String> tables = new HashSet<>();
        try (ResultSet rows = facts.getTables(null, schema, null, new String[] {"TABLE", "BASE TABLE"})) {
            while (rows.next()) {
                tables.add(lower(rows.getString("TABLE_NAME")));
            }
        }
        tables.remove(MIGRATIONS);
        return tables;
    }

    private static List<String> namingPeople(Connection connection) throws SQLException {
        DatabaseMetaData facts = connection.getMetaData();
        String person = facts.storesUpperCaseIdentifiers() ? "PERSON" : "person";
        List<String> columns = new ArrayList<>();
        try (ResultSet rows = facts.getExportedKeys(null, connection.getSchema(), person)) {
            while (rows.next()) {
                columns.add(lower(rows.getString("FKTABLE_NAME")) + "." + lower(rows.getString("FKCOLUMN_NAME")));
            }
        }
        return columns;
    }

    private static String lower(String name) {
        return name.toLowerCase(Locale.ROOT);
    }

    /** What is asked of the database about itself. */
    private interface Question<T> {
        List<T> ask(Connection connection) throws SQLException;
    }
}
