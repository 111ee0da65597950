package dapple.archive;

/** What an archive was made of. */
enum ArchiveKind {
    EVERYTHING,
    YEAR
}
