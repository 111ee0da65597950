package dapple.archive;

/** What was taken in. */
record TakenIn(Manifest manifest, long rows) {
    boolean isYear() {
        return manifest.kind() == ArchiveKind.YEAR;
    }
}
