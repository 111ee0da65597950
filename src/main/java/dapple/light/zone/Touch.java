package dapple.light.zone;

import dapple.light.geometry.Bounds;
import dapple.light.geometry.Solid;
import dapple.light.geometry.Vec;
import java.util.ArrayList;
import java.util.List;

/**
 * What counts as touching. Places often lie exactly on a solid's face, on the seam of two or under one that stands on the
 * floor, where to the light they are open. So they are looked at a micrometre beside and above: a place on a top or beside
 * a wall has air there; one on a seam or under a solid has none.
 */
final class Touch {
    private static final double METRES = 1e-6;

    /** From a place to the four points beside and above it. */
    static final List<Vec> ABOVE = List.of(
            new Vec(METRES, METRES, METRES),
            new Vec(-METRES, METRES, METRES),
            new Vec(METRES, -METRES, METRES),
            new Vec(-METRES, -METRES, METRES));

    private Touch() {}

    /** Those of some solids that may touch a box with sides along the axes. */
    static List<Solid> meeting(List<Solid> solids, Bounds box) {
        List<Solid> found = List.of();
        for (Solid solid : solids) {
            if (mayMeet(solid.bounds(), box)) {
                found = found.isEmpty() ? new ArrayList<>() : found;
                found.add(solid);
            }
        }
        return found;
    }

    private static boolean mayMeet(Bounds one, Bounds other) {
        return one.least().x() <= other.greatest().x() + 2 * METRES
                && one.greatest().x() >= other.least().x() - 2 * METRES
                && one.least().y() <= other.greatest().y() + 2 * METRES
                && one.greatest().y() >= other.least().y() - 2 * METRES
                && one.least().z() <= other.greatest().z() + 2 * METRES
                && one.greatest().z() >= other.least().z() - 2 * METRES;
    }

    static boolean isHeld(Vec place, List<Solid> solids) {
        for (Solid solid : solids) {
            if (solid.holds(place)) {
                return true;
            }
        }
        return false;
    }

    static boolean isBlocked(Vec from, Vec to, List<Solid> solids) {
        for (Solid solid : solids) {
            if (solid.blocks(from, to)) {
                return true;
            }
        }
        return false;
    }

    /** Whether a place has air beside and above it. */
    static boolean isFree(Vec place, List<Solid> solids) {
        if (solids.isEmpty()) {
            return true;
        }
        for (Vec beside : ABOVE) {
            if (!isHeld(place.plus(beside), solids)) {
                return true;
            }
        }
        return false;
    }

    /** Whether something stands in a way, even if it is only passed along a seam or under a solid on the floor. */
    static boolean parts(Vec from, Vec way, List<Solid> solids) {
        for (Vec beside : ABOVE) {
            Vec start = from.plus(beside);
            if (!isBlocked(start, start.plus(way), solids)) {
                return false;
            }
        }
        return true;
    }
}
