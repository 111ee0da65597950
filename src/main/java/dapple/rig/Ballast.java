package dapple.rig;

/** The ballast or other control gear that a lamp burns on, at its fitting. */
public enum Ballast {
    /** In the lamp itself. */
    BUILT_IN,
    /** Of its own, and there. */
    THERE,
    /** It needs one that is not there. */
    MISSING,
    NOT_NEEDED
}
