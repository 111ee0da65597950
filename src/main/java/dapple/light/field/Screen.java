package dapple.light.field;

import dapple.light.cover.Filter;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Quantity;

/** A filter as paths from one place meet it. */
final class Screen {
    private final Filter filter;
    private final Filter.Plane plane;

    Screen(Filter filter) {
        this.filter = filter;
        this.plane = filter.plane();
    }

    Filter filter() {
        return filter;
    }

    /** Whether it is but a rectangle of its plane, which paths between those to the corners of a lamp may cross. */
    boolean isLimited() {
        return plane.over().isPresent();
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
     * @param crossed receives the interval as shares of the way from a to b
     * @return whether any path does
     */
    boolean crossing(Vec from, Vec a, Vec b, double[] crossed) {
        double start = plane.height(from);
        double side = Math.signum(start);
        if (side == 0) {
            return false;
        }
        crossed[0] = 0;
        crossed[1] = 1;
        double atA = plane.height(a);
        double atB = plane.height(b);
        boolean left = cut(crossed, -side * atA, -side * atB);
        if (!left || plane.over().isEmpty()) {
            return left;
        }
        Filter.Rectangle over = plane.over().get();
        return cutSide(crossed, side, start, atA, atB, from.x() - over.lowX(), a.x() - from.x(), b.x() - from.x())
                && cutSide(crossed, side, start, atA, atB, over.highX() - from.x(), from.x() - a.x(), from.x() - b.x())
                && cutSide(crossed, side, start, atA, atB, from.y() - over.lowY(), a.y() - from.y(), b.y() - from.y())
                && cutSide(crossed, side, start, atA, atB, over.highY() - from.y(), from.y() - a.y(), from.y() - b.y());
    }

    /** Keeps what crosses the plane on the inner side of one edge: linear along the segment. */
    private static boolean cutSide(
            double[] crossed,
            double side,
            double start,
            double atA,
            double atB,
            double room,
            double wayA,
            double wayB) {
        return cut(crossed, side * (room * (start - atA) + start * wayA), side * (room * (start - atB) + start * wayB));
    }

    /** Keeps the part of the interval in which a linear function with these end values is above 0. */
    private static boolean cut(double[] interval, double atA, double atB) {
        if (atA <= 0 && atB <= 0) {
            return false;
        }
        if (atA < 0 || atB < 0) {
            double zero = atA / (atA - atB);
            if (atA < 0) {
                interval[0] = Math.max(interval[0], zero);
            } else {
                interval[1] = Math.min(interval[1], zero);
            }
        }
        return interval[1] > interval[0];
    }

    boolean isAlikeAtEveryAngle() {
        return filter.isAlikeAtEveryAngle();
    }

    double transmittance(Quantity quantity, Vec direction) {
        return filter.transmittance(quantity, direction);
    }
}
