package dapple.archive.sheet;

/** Whether readings of an enclosure were to be expected in a week. */
public enum WeekDue {
    DUE,
    /** Nobody lived there in all of it. */
    EMPTY,
    /** Its lamps were off on purpose in all of it. */
    PLANNED_OFF,
    OUT_OF_USE
}
