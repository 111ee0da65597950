package dapple.archive;

/** Why an archive is not taken in. */
enum ArchiveFault {
    NO_FILE,
    /** No zip, or its end is missing. */
    CUT,
    /** A zip, but none of this program. */
    STRANGE,
    /** Something in it is not what it was when it was written. */
    ALTERED,
    NEWER,
    NOT_EMPTY,
    /** Nobody in it has a password, and no administrator was named. */
    NEEDS_ADMINISTRATOR,
    NAME_TAKEN,
    /** Its sums are right, but the database does not take it. */
    UNFIT
}
