package dapple.light.geometry;

/**
 * What one solid hides from one place. It is set to a place first, and asked then. Not for two threads at once.
 */
public interface Shade {
    /** Looks from another place. */
    void lookFrom(Vec place);

    /**
     * The part of a segment that is hidden; one interval, since the solid is convex.
     *
     * @param shadow receives the interval, as shares of the way from a to b
     * @return whether anything is hidden
     */
    boolean shadow(Vec a, Vec b, Shadow shadow);

    /** Whether a point is hidden. */
    boolean hides(Vec point);

    /** Whether it can be told at once that nothing of a hull is hidden. */
    default boolean sparesAll(Hull hull) {
        return false;
    }

    /** Whether all of a hull is hidden: what a convex solid hides is convex, so the corners tell. */
    default boolean hidesAll(Hull hull) {
        for (int corner = 0; corner < hull.corners().size(); corner++) {
            if (!hides(hull.corners().get(corner))) {
                return false;
            }
        }
        return true;
    }
}
