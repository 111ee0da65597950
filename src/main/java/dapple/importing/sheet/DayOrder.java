package dapple.importing.sheet;

/** Which of two numbers in a written day is the month, as far as a column shows it. */
public enum DayOrder {
    /** No written day is there that needs it. */
    NOT_ASKED,
    /** There is one that may be read either way, and none that decides. */
    UNDECIDED,
    DAY_FIRST,
    MONTH_FIRST,
    /** Both, in different cells. */
    MIXED;

    public DayOrder and(DayOrder other) {
        if (other == this || other == NOT_ASKED) {
            return this;
        }
        if (this == NOT_ASKED || (this == UNDECIDED && other != UNDECIDED)) {
            return other;
        }
        return other == UNDECIDED ? this : MIXED;
    }

    public boolean isDecided() {
        return this == DAY_FIRST || this == MONTH_FIRST;
    }
}
