package dapple.light.uncertainty;

import dapple.light.geometry.Vec;
import java.util.ArrayList;
import java.util.List;

/** Ways by which a place is moved to see what its uncertainty does to the light, as multiples of its coordinates' u. */
final class Displacements {
    private static final double FAR = UncertainAmount.COVERAGE_FACTOR;
    private static final double BEYOND = 2.5;
    private static final List<Vec> AXES = List.of(new Vec(1, 0, 0), new Vec(0, 1, 0), new Vec(0, 0, 1));

    private Displacements() {}

    /**
     * How far along an axis, either way: 2 u, and u as well where narrow shades may lie between.
     *
     * @param edges whether light may change at once from one place to the next
     */
    static List<Double> steps(boolean edges) {
        return edges ? List.of(FAR, -FAR, FAR / 2, -FAR / 2) : List.of(FAR, -FAR);
    }

    static List<Vec> axes() {
        return AXES;
    }

    /**
     * All 26 directions along and between the axes: an edge may lie in any. A little beyond 2 u, since receiver and lamp
     * move at once.
     */
    static List<Vec> around(boolean edges) {
        List<Vec> around = new ArrayList<>();
        for (int number = 0; number < 27 && edges; number++) {
            Vec corner = new Vec(number % 3 - 1, number / 3 % 3 - 1, number / 9 - 1);
            if (corner.length() > 0) {
                around.add(corner.unit().times(BEYOND));
            }
        }
        return around;
    }
}
