package dapple.agreement;

/** What the readings tell of meters. */
public enum FindingKind {
    /** A meter reads ever less, or more, since its first reading. */
    DRIFTING,
    /** A meter reads less, or more, from one week on. */
    KNOCKED,
    /** All meters of a quantity do: the lamps, their supply, the house or the way of reading, no meter. */
    ALL_AT_ONCE
}
