package dapple.light.geometry;

/** A box with sides along the axes, from its least to its greatest corner. */
public record Bounds(Vec least, Vec greatest) {
    public static Bounds around(Vec... places) {
        Vec least = places[0];
        Vec greatest = places[0];
        for (Vec place : places) {
            least = new Vec(
                    Math.min(least.x(), place.x()), Math.min(least.y(), place.y()), Math.min(least.z(), place.z()));
            greatest = new Vec(
                    Math.max(greatest.x(), place.x()),
                    Math.max(greatest.y(), place.y()),
                    Math.max(greatest.z(), place.z()));
        }
        return new Bounds(least, greatest);
    }

    /** Whether this box and the box around a second one and a place have anything in common. */
    public boolean meetsHullOf(Bounds other, Vec place) {
        return Math.min(other.least.x(), place.x()) < greatest.x()
                && Math.max(other.greatest.x(), place.x()) > least.x()
                && Math.min(other.least.y(), place.y()) < greatest.y()
                && Math.max(other.greatest.y(), place.y()) > least.y()
                && Math.min(other.least.z(), place.z()) < greatest.z()
                && Math.max(other.greatest.z(), place.z()) > least.z();
    }
}
