package dapple.light.geometry;

import java.util.List;

/** An opaque, black, convex solid. Touching it is not shading: only what passes strictly through it is shaded. */
public sealed interface Solid permits Box, UprightCylinder, Capsule {
    /** How far a solid is shrunk so that what only touches it is not shaded: 1 nm. */
    double TOUCH = 1e-9;

    /** Whether a place lies strictly inside. */
    boolean holds(Vec place);

    /** A box around it with sides along the axes. */
    Bounds bounds();

    /**
     * The part of a segment from a to b that is hidden from a place; one interval, since the solid is convex.
     *
     * @param shadow receives the interval, as shares of the way from a to b
     * @return whether anything is hidden
     */
    boolean shadow(Vec from, Vec a, Vec b, Shadow shadow);

    /**
     * Whether it may stand between a place and anything within a hull; true in doubt. False where a plane along one of
     * its sides has the place and the whole hull in front of it.
     */
    default boolean canShade(Vec from, List<Vec> hull) {
        return true;
    }

    /** Whether the way between two places passes strictly through it. */
    boolean blocks(Vec from, Vec to);
}
