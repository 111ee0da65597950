package dapple.enclosure;

/** How a sensor is held at a point. */
public enum Facing {
    /** Turned to the strongest direction (common practice, no source). */
    STRONGEST,
    /** Level, facing up. */
    LEVEL
}
