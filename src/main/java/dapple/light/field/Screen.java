package dapple.light.field;

import dapple.light.cover.Filter;
import dapple.light.geometry.Hull;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Quantity;
import java.util.List;

/** A filter as paths to one lamp meet it. */
final class Screen {
    private final Filter filter;
    private final Filter.Plane plane;
    private final List<Vec> corners;
    private final double leastHeight;
    private final double mostHeight;

    /**
     * A filter before a lamp.
     *
     * @param hull around everything that emits
     */
    Screen(Filter filter, Hull hull) {
        this.filter = filter;
        this.plane = filter.plane();
        this.corners = hull.corners();
        this.leastHeight = corners.stream().mapToDouble(plane::height).min().orElse(0);
        this.mostHeight = corners.stream().mapToDouble(plane::height).max().orElse(0);
    }

    /** Which of the paths from a place to a lamp cross a filter. */
    enum Crossing {
        ALL,
        SOME,
        NONE
    }

    /** Which paths from a place to the lamp cross it; some, in doubt. */
    Crossing crossing(Vec from) {
        double start = plane.height(from);
        double side = Math.signum(start);
        if (side == 0 || (side > 0 ? leastHeight >= 0 : mostHeight <= 0)) {
            return Crossing.NONE;
        }
        boolean all = side > 0 ? mostHeight < 0 : leastHeight > 0;
        return all && areAllWithin(from) ? Crossing.ALL : Crossing.SOME;
    }

    private boolean areAllWithin(Vec from) {
        if (plane.over().isPresent()) {
            for (int corner = 0; corner < corners.size(); corner++) {
                if (!isCrossed(from, corners.get(corner))) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Whether a path between two places crosses it. A path that ends on the plane does not. */
    boolean isCrossed(Vec from, Vec to) {
        double start = plane.height(from);
        double end = plane.height(to);
        if (!(start * end < 0)) {
            return false;
        }
        if (plane.over().isEmpty()) {
            return true;
        }
        double share = start / (start - end);
        Filter.Rectangle over = plane.over().get();
        double x = from.x() + share * (to.x() - from.x());
        double y = from.y() + share * (to.y() - from.y());
        return x >= over.lowX() && x <= over.highX() && y >= over.lowY() && y <= over.highY();
    }

    /**
     * The part of a segment from a to b whose paths to a place cross it.
     *
     * @return whether any path does
     */
    boolean crossing(Vec from, Vec a, Vec b, Part crossed) {
        double start = plane.height(from);
        double side = Math.signum(start);
        double atA = plane.height(a);
        double atB = plane.height(b);
        crossed.begin();
        if (side == 0 || !crossed.keep(1, -side * atA, -side * atB)) {
            return false;
        }
        return plane.over().isEmpty() || withinSides(plane.over().get(), from, a, b, crossed);
    }

    private boolean withinSides(Filter.Rectangle over, Vec from, Vec a, Vec b, Part crossed) {
        double start = plane.height(from);
        Side side = new Side(Math.signum(start), start, plane.height(a), plane.height(b));
        return side.keep(2, crossed, from.x() - over.lowX(), a.x() - from.x(), b.x() - from.x())
                && side.keep(3, crossed, over.highX() - from.x(), from.x() - a.x(), from.x() - b.x())
                && side.keep(4, crossed, from.y() - over.lowY(), a.y() - from.y(), b.y() - from.y())
                && side.keep(5, crossed, over.highY() - from.y(), from.y() - a.y(), from.y() - b.y());
    }

    /** Heights over the plane of a place and of the ends of a segment. */
    private record Side(double sign, double start, double atA, double atB) {
        /** Keeps what crosses the plane on the inner side of an edge, which is linear along the segment. */
        boolean keep(int edge, Part crossed, double room, double wayA, double wayB) {
            return crossed.keep(
                    edge, sign * (room * (start - atA) + start * wayA), sign * (room * (start - atB) + start * wayB));
        }
    }

    boolean isAlikeAtEveryAngle() {
        return filter.isAlikeAtEveryAngle();
    }

    /** What passes at every angle alike. */
    double share(Quantity quantity) {
        return filter.transmittance(quantity, plane.normal());
    }

    double transmittance(Quantity quantity, double x, double y, double z) {
        return filter.transmittance(quantity, x, y, z);
    }
}
