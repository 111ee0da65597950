package dapple.round;

/** Where a walk stands. */
public enum WalkState {
    /** Its day has passed, and it is the newest that was due. */
    OVERDUE,
    UNDER_WAY,
    DUE,
    /** Its day is yet to come. */
    AHEAD,
    DONE,
    /** Somebody has said why it was not walked. */
    NOT_WALKED,
    /** There was nothing to read at any of its enclosures. */
    NOTHING_TO_READ,
    /** Its day has passed, and a later walk has been due since. */
    MISSED;

    /** Whether it waits for somebody to walk it now. */
    public boolean isOpen() {
        return this == OVERDUE || this == UNDER_WAY || this == DUE;
    }
}
