package dapple.light.judging;

/** What a measuring point stands for. */
public enum PointRole {
    BASKING,
    GRADIENT,
    SHADE,
    NEAREST_REACHABLE,
    /** Where a keeper's face is: no animal's target is judged there. */
    KEEPER
}
