package dapple.light.zone;

/** What a place offers, by the largest irradiance on any plane there. Every reachable place has exactly one. */
public enum Zone {
    /** Above the ceiling. */
    OVER_CEILING,
    /** Above the target for basking, at most the ceiling. */
    ABOVE_TARGET,
    /** Inside the target for basking, its ends included. */
    BASKING,
    /** Between basking and shade. */
    GRADIENT,
    /** At most the limit of shade. */
    SHADE
}
