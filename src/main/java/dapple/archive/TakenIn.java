package dapple.archive;

/** What was taken in. */
record TakenIn(Manifest manifest, long rows) {}
