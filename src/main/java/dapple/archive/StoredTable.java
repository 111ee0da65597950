package dapple.archive;

import java.util.List;
import java.util.stream.Collectors;

/**
 * A table of the database.
 *
 * @param key columns of its primary key, in their order
 * @param parents tables that its foreign keys name, itself left out
 * @param ownReferences foreign keys by which its rows name one another
 */
record StoredTable(
        String name,
        List<TableColumn> columns,
        List<String> key,
        List<String> parents,
        List<OwnReference> ownReferences) {

    /** A row of a table names another of the same table. */
    record OwnReference(String constraint, String column, String target) {}

    String entryName() {
        return "tables/" + name + ".csv";
    }

    List<TableColumn> files() {
        return columns.stream().filter(TableColumn::isFile).toList();
    }

    List<String> columnNames() {
        return columns.stream().map(TableColumn::name).toList();
    }

    /** The columns, or what is asked of them, for a query. */
    String keyList() {
        return key.stream().map(column -> "t." + column).collect(Collectors.joining(", "));
    }
}
