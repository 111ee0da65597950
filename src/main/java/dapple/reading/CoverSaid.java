package dapple.reading;

/** How the cover was at a visit, as far as somebody said so. */
public enum CoverSaid {
    OPEN,
    CLOSED,
    /** Takes back what was said. */
    NOT_SAID
}
