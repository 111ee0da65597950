package dapple.leaving;

/**
 * A column of the database.
 *
 * @param size of a text: characters at most; of others it says nothing
 */
record StoredColumn(String table, String name, boolean isText, int size) {}
