package dapple.target;

/** Where a limit holds. */
public enum LimitPlace {
    BASKING,
    SHADE,
    /** At every reachable point. */
    CEILING
}
