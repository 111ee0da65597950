package dapple.enclosure;

/** How animals come near to the lamps. */
public enum ReachKind {
    /** They stay on the floor and on what stands there. */
    GROUND,
    JUMPS,
    /** Walls, branches, lid and mesh. */
    CLIMBS
}
