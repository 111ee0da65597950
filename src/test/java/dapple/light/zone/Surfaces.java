package dapple.light.zone;

import dapple.light.cover.Filter;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Interval;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** Valid surfaces and light on them. */
final class Surfaces {
    private Surfaces() {}

    /** A level square of 1 m around the origin. */
    static RestingSurface level() {
        return leaning(new Vec(0, 0, 1));
    }

    /** A plane through the origin over a square of 1 m. */
    static RestingSurface leaning(Vec normal) {
        return new RestingSurface(new Vec(0, 0, 0), normal, Filter.Rectangle.between(-0.5, -0.5, 0.5, 0.5));
    }

    /** Light of one quantity, measured exactly. */
    static SurfaceLight lit(RestingSurface surface, Body body, Interval target, ToDoubleFunction<Vec> light) {
        return SurfaceLight.of(SurfaceLattice.of(surface, body.lengthMetres()), List.of(target), (lattice, places) -> {
            double[][] found = new double[1][places.length];
            for (int at = 0; at < places.length; at++) {
                found[0][at] = light.applyAsDouble(lattice.place(places[at]));
            }
            return found;
        });
    }

    /** The patch in which a body is to bask. */
    static Optional<BaskingPatch> patch(SurfaceLight light, Body body) {
        return Spot.largestOn(light).map(spot -> BaskingPatch.of(light, spot, Optional.of(body)));
    }

    /** The amount 10 in the middle of a round spot, falling to 5 at its radius. */
    static ToDoubleFunction<Vec> spot(Vec middle, double radius) {
        return place -> {
            double out = place.minus(middle).length() / radius;
            return Math.max(0, 10 - 5 * out * out);
        };
    }
}
