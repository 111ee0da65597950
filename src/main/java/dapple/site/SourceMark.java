package dapple.site;

/** How far a number is known. */
public enum SourceMark {
    PUBLISHED,
    /** Published, but read in an abstract or in agreeing secondary texts only. */
    PUBLISHED_SECONDARY,
    /** Common practice, no source. */
    COMMON_PRACTICE,
    /** From memory, unverified. */
    FROM_MEMORY,
    /** Measured by the site itself. */
    MEASURED,
    /** Computed from a spectrum on file. */
    COMPUTED
}
