package dapple.rig;

/** What was done to a rig. */
public enum RigChangeKind {
    /** What was found there when recording began. */
    FIRST_SET_UP,
    LAMP_FITTED,
    LAMP_TAKEN_OUT,
    LAMP_SWAPPED,
    MOVED,
    COVER_CHANGED,
    FURNITURE_CHANGED,
    TIMER_CHANGED,
    GEAR_CHANGED,
    /** Several things at once, as a draft said. */
    REBUILT
}
