package dapple.light.zone;

import dapple.light.cover.Filter;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Check;
import java.util.List;

/**
 * A plane that animals rest on: floor, ledge or perch, level or leaning.
 *
 * @param point any point of the plane
 * @param normal towards the side on which they rest; not level
 * @param within the part of the plane over this rectangle in x and y
 */
public record RestingSurface(Vec point, Vec normal, Filter.Rectangle within) {
    /** Least vertical part of the normal, for a plane that a rectangle in x and y can bound: 89.4° from level. */
    public static final double LEAST_UPRIGHT = 0.01;

    /** How far a place may lie off an edge or the plane and count as on it, for the sake of rounding: 1 µm. */
    private static final double SLACK_METRES = 1e-6;

    public RestingSurface {
        normal = normal.unit();
        Check.within("upright part of a normal", Math.abs(normal.z()), LEAST_UPRIGHT, 2, "");
    }

    /** The point of the plane over or under a place in x and y. */
    Vec at(double x, double y) {
        double rise = (normal.x() * (point.x() - x) + normal.y() * (point.y() - y)) / normal.z();
        return new Vec(x, y, point.z() + rise);
    }

    /** Its four corners in order, from the least x and y along x. */
    public List<Vec> corners() {
        return List.of(
                at(within.lowX(), within.lowY()),
                at(within.highX(), within.lowY()),
                at(within.highX(), within.highY()),
                at(within.lowX(), within.highY()));
    }

    boolean isOver(Vec place) {
        return place.x() >= within.lowX() - SLACK_METRES
                && place.x() <= within.highX() + SLACK_METRES
                && place.y() >= within.lowY() - SLACK_METRES
                && place.y() <= within.highY() + SLACK_METRES;
    }

    /** Whether a place lies on the plane or on the side on which animals rest. */
    boolean isBefore(Vec place) {
        return place.minus(point).dot(normal) >= -SLACK_METRES;
    }

    /** Whether who stands on it reaches a place, which lies straight above it. */
    boolean reaches(Vec place, double reachMetres) {
        double above = place.z() - at(place.x(), place.y()).z();
        return normal.z() > 0 && isOver(place) && above >= -SLACK_METRES && above <= reachMetres + SLACK_METRES;
    }
}
