package dapple.site;

/** How far a limit is known. */
public enum SourceMark {
    PUBLISHED,
    /** Published, but read in an abstract or in agreeing secondary texts only. */
    PUBLISHED_SECONDARY,
    /** Common practice, no source. */
    COMMON_PRACTICE,
    /** From memory, unverified. */
    FROM_MEMORY
}
