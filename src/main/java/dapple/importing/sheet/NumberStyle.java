package dapple.importing.sheet;

/** What separates the whole part of numbers from the rest, as far as a sheet shows it. */
public enum NumberStyle {
    UNDECIDED,
    POINT,
    COMMA,
    /** Both, in different cells: what is not clear by itself cannot be read. */
    MIXED;

    public NumberStyle and(NumberStyle other) {
        if (other == UNDECIDED || other == this) {
            return this;
        }
        return this == UNDECIDED ? other : MIXED;
    }

    boolean isDecided() {
        return this == POINT || this == COMMA;
    }
}
