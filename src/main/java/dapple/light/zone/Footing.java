package dapple.light.zone;

import dapple.light.geometry.Bounds;
import dapple.light.geometry.Solid;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Check;
import java.util.List;

/**
 * Where a ground dweller can be: at most its reach straight above the floor (z = 0), the top of a solid or a resting
 * surface.
 *
 * @param reachMetres at least 0, m; the keeper's setting, commonly the height of the body
 */
public record Footing(double reachMetres, List<Solid> solids, List<RestingSurface> surfaces) {
    /** So that a place exactly at its reach counts, whatever its rounding: 1 µm. */
    private static final double SLACK_METRES = 1e-6;

    public Footing {
        Check.notNegative("reach", reachMetres, "m");
        solids = List.copyOf(solids);
        surfaces = List.copyOf(surfaces);
    }

    /** Whether it can be at a place, which must not lie inside a solid. */
    boolean holds(Vec place) {
        return (place.z() >= -SLACK_METRES && place.z() <= reachMetres + SLACK_METRES)
                || standsOnASurface(place)
                || standsOnASolid(place);
    }

    private boolean standsOnASurface(Vec place) {
        for (RestingSurface surface : surfaces) {
            if (surface.reaches(place, reachMetres)) {
                return true;
            }
        }
        return false;
    }

    /** Whether a solid begins below any point beside the place, as far as that point lies outside all solids. */
    private boolean standsOnASolid(Vec place) {
        Vec down = new Vec(0, 0, -reachMetres - 2 * SLACK_METRES);
        List<Solid> below = Touch.meeting(solids, Bounds.around(place, place.plus(down)));
        if (below.isEmpty()) {
            return false;
        }
        for (Vec offset : Touch.ABOVE) {
            Vec beside = place.plus(offset);
            if (!Touch.isHeld(beside, below) && Touch.isBlocked(beside, beside.plus(down), below)) {
                return true;
            }
        }
        return false;
    }
}
