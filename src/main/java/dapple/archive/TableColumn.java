package dapple.archive;

/**
 * A column of a table.
 *
 * @param isCounted whether the database counts its numbers up by itself
 */
record TableColumn(String name, CellKind kind, boolean isCounted) {
    boolean isFile() {
        return kind == CellKind.FILE;
    }
}
