package dapple.importing;

/** Where in the file something is said. */
record Origin(String sheet, long line) {}
