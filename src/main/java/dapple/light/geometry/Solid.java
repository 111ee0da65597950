package dapple.light.geometry;

/** An opaque, black, convex solid. Touching it is not shading: only what passes strictly through it is shaded. */
public sealed interface Solid permits Box, UprightCylinder, Capsule {
    /** How far a solid is shrunk so that what only touches it is not shaded: 1 nm. */
    double TOUCH = 1e-9;

    /** Whether a place lies strictly inside. */
    boolean holds(Vec place);

    /** A box around it with sides along the axes. */
    Bounds bounds();

    /** A block around it, which may lie at a slant. */
    Hull hull();

    /** What it hides, to be asked from one place after the other. */
    Shade shade();

    /** Whether the way between two places passes strictly through it. */
    default boolean blocks(Vec from, Vec to) {
        Shade shade = shade();
        shade.lookFrom(from);
        return shade.hides(to);
    }
}
