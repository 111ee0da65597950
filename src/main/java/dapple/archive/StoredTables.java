package dapple.archive;

import java.sql.Connection;
import java.sql.DatabaseMetaData;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** Reads from a database which tables it has, in an order in which each comes after those that it names. */
final class StoredTables {
    /** Who is signed in, and what was migrated: of this running installation alone. */
    private static final String SESSIONS = "spring_session";

    private static final String MIGRATIONS = "flyway_schema_history";

    /** Says that the installation has begun: it comes last, so that nobody is let in before everything is there. */
    private static final String DOOR = "installation";

    private final DatabaseMetaData facts;
    private final String schema;

    private StoredTables(DatabaseMetaData facts, String schema) {
        this.facts = facts;
        this.schema = schema;
    }

    static List<StoredTable> of(Connection connection) throws SQLException {
        return new StoredTables(connection.getMetaData(), connection.getSchema()).inOrder();
    }

    private List<StoredTable> inOrder() throws SQLException {
        Map<String, StoredTable> waiting = all();
        List<StoredTable> ordered = new ArrayList<>();
        Set<String> placed = new HashSet<>();
        while (!waiting.isEmpty()) {
            List<StoredTable> free = waiting.values().stream()
                    .filter(table -> placed.containsAll(table.parents()))
                    .filter(table -> !table.name().equals(DOOR) || waiting.size() == 1)
                    .toList();
            if (free.isEmpty()) {
                throw new IllegalStateException("tables name one another in a circle: " + waiting.keySet());
            }
            free.forEach(table -> placed.add(table.name()));
            free.forEach(table -> waiting.remove(table.name()));
            ordered.addAll(free);
        }
        return ordered;
    }

    private Map<String, StoredTable> all() throws SQLException {
        Map<String, StoredTable> tables = new TreeMap<>();
        for (String name : names()) {
            tables.put(lower(name), table(name));
        }
        return tables;
    }

    private List<String> names() throws SQLException {
        List<String> names = new ArrayList<>();
        try (ResultSet rows = facts.getTables(null, schema, null, new String[] {"TABLE", "BASE TABLE"})) {
            while (rows.next()) {
                names.add(rows.getString("TABLE_NAME"));
            }
        }
        names.removeIf(name -> lower(name).startsWith(SESSIONS) || lower(name).equals(MIGRATIONS));
        return names;
    }

    private StoredTable table(String name) throws SQLException {
        List<String> parents = new ArrayList<>();
        List<StoredTable.OwnReference> own = new ArrayList<>();
        try (ResultSet rows = facts.getImportedKeys(null, schema, name)) {
            while (rows.next()) {
                String parent = lower(rows.getString("PKTABLE_NAME"));
                if (parent.equals(lower(name))) {
                    own.add(ownReference(rows));
                } else {
                    parents.add(parent);
                }
            }
        }
        return new StoredTable(lower(name), columns(name), key(name), List.copyOf(parents), List.copyOf(own));
    }

    private static StoredTable.OwnReference ownReference(ResultSet row) throws SQLException {
        return new StoredTable.OwnReference(
                lower(row.getString("FK_NAME")),
                lower(row.getString("FKCOLUMN_NAME")),
                lower(row.getString("PKCOLUMN_NAME")));
    }

    private List<TableColumn> columns(String table) throws SQLException {
        List<TableColumn> columns = new ArrayList<>();
        try (ResultSet rows = facts.getColumns(null, schema, table, null)) {
            while (rows.next()) {
                columns.add(new TableColumn(
                        lower(rows.getString("COLUMN_NAME")),
                        CellKind.ofType(rows.getString("TYPE_NAME")),
                        rows.getString("IS_AUTOINCREMENT").equals("YES")));
            }
        }
        return List.copyOf(columns);
    }

    private List<String> key(String table) throws SQLException {
        Map<Integer, String> places = new TreeMap<>();
        try (ResultSet rows = facts.getPrimaryKeys(null, schema, table)) {
            while (rows.next()) {
                places.put(rows.getInt("KEY_SEQ"), lower(rows.getString("COLUMN_NAME")));
            }
        }
        return List.copyOf(places.values());
    }

    private static String lower(String name) {
        return name.toLowerCase(Locale.ROOT);
    }
}
