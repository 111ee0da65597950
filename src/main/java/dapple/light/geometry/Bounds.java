package dapple.light.geometry;

import java.util.List;

/** A box with sides along the axes, from its least to its greatest corner. */
public record Bounds(Vec least, Vec greatest) {
    public static Bounds around(Vec one, Vec other) {
        return around(List.of(one, other));
    }

    static Bounds around(List<Vec> places) {
        Vec least = places.get(0);
        Vec greatest = least;
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
}
