package dapple.light.geometry;

import java.util.List;

/** A box, turned about the vertical through its centre. */
public final class Box implements Solid {
    /** Corners that an edge joins differ in one bit. */
    private static final int[][] EDGES = {
        {0, 1}, {2, 3}, {4, 5}, {6, 7}, {0, 2}, {1, 3}, {4, 6}, {5, 7}, {0, 4}, {1, 5}, {2, 6}, {3, 7}
    };

    private final Vec[] corners;
    private final Vec centre;
    private final Vec half;
    private final double cos;
    private final double sin;
    private final Bounds bounds;

    private Box(Vec least, Vec greatest, double yawDegrees) {
        this.centre = least.plus(greatest).times(0.5);
        this.half = greatest.minus(least).times(0.5);
        this.cos = Math.cos(Math.toRadians(yawDegrees));
        this.sin = Math.sin(Math.toRadians(yawDegrees));
        double reachX = Math.abs(cos) * half.x() + Math.abs(sin) * half.y();
        double reachY = Math.abs(sin) * half.x() + Math.abs(cos) * half.y();
        Vec reach = new Vec(reachX, reachY, half.z());
        this.bounds = new Bounds(centre.minus(reach), centre.plus(reach));
        this.corners = corners();
    }

    /**
     * A box by its corners before turning.
     *
     * @param yawDegrees counter-clockwise seen from above
     * @throws IllegalArgumentException unless greatest is above least in x, y and z
     */
    public static Box of(Vec least, Vec greatest, double yawDegrees) {
        Vec size = greatest.minus(least);
        if (!(size.x() > 0 && size.y() > 0 && size.z() > 0) || !Double.isFinite(yawDegrees) || !size.isFinite()) {
            throw new IllegalArgumentException("a box must have a size, was " + least + " to " + greatest);
        }
        return new Box(least, greatest, yawDegrees);
    }

    private Vec local(Vec place) {
        Vec way = place.minus(centre);
        return new Vec(cos * way.x() + sin * way.y(), cos * way.y() - sin * way.x(), way.z());
    }

    @Override
    public boolean holds(Vec place) {
        Vec at = local(place);
        return Math.abs(at.x()) < half.x() - TOUCH
                && Math.abs(at.y()) < half.y() - TOUCH
                && Math.abs(at.z()) < half.z() - TOUCH;
    }

    @Override
    public Bounds bounds() {
        return bounds;
    }

    @Override
    public boolean canShade(Vec from, List<Vec> hull) {
        Vec at = local(from);
        int outside = sides(at);
        for (int index = 0; index < hull.size() && outside != 0; index++) {
            outside &= sides(local(hull.get(index)));
        }
        return outside == 0 && !Cones.areParted(from, corners, EDGES, hull);
    }

    private Vec[] corners() {
        Vec[] found = new Vec[8];
        for (int index = 0; index < found.length; index++) {
            double x = (index & 1) == 0 ? -half.x() : half.x();
            double y = (index & 2) == 0 ? -half.y() : half.y();
            double z = (index & 4) == 0 ? -half.z() : half.z();
            found[index] = centre.plus(new Vec(cos * x - sin * y, sin * x + cos * y, z));
        }
        return found;
    }

    /** The sides that a place lies in front of, a bit each. */
    private int sides(Vec at) {
        return (at.x() >= half.x() - TOUCH ? 1 : 0)
                | (at.x() <= TOUCH - half.x() ? 2 : 0)
                | (at.y() >= half.y() - TOUCH ? 4 : 0)
                | (at.y() <= TOUCH - half.y() ? 8 : 0)
                | (at.z() >= half.z() - TOUCH ? 16 : 0)
                | (at.z() <= TOUCH - half.z() ? 32 : 0);
    }

    @Override
    public boolean shadow(Vec from, Vec a, Vec b, Shadow shadow) {
        Vec r = local(from);
        Vec p = local(a).minus(r);
        Vec q = local(b).minus(r);
        shadow.begin();
        return shadow.keep(half.x() - TOUCH - r.x(), p.x(), q.x())
                && shadow.keep(half.x() - TOUCH + r.x(), -p.x(), -q.x())
                && shadow.keep(half.y() - TOUCH - r.y(), p.y(), q.y())
                && shadow.keep(half.y() - TOUCH + r.y(), -p.y(), -q.y())
                && shadow.keep(half.z() - TOUCH - r.z(), p.z(), q.z())
                && shadow.keep(half.z() - TOUCH + r.z(), -p.z(), -q.z())
                && shadow.measure();
    }

    @Override
    public boolean blocks(Vec from, Vec to) {
        Vec r = local(from);
        Vec way = local(to).minus(r);
        double enter = 0;
        double leave = 1;
        double[] starts = {r.x(), r.y(), r.z()};
        double[] ways = {way.x(), way.y(), way.z()};
        double[] halves = {half.x(), half.y(), half.z()};
        for (int axis = 0; axis < 3; axis++) {
            double reach = halves[axis] - TOUCH;
            if (ways[axis] == 0) {
                if (Math.abs(starts[axis]) >= reach) {
                    return false;
                }
            } else {
                double one = (-reach - starts[axis]) / ways[axis];
                double other = (reach - starts[axis]) / ways[axis];
                enter = Math.max(enter, Math.min(one, other));
                leave = Math.min(leave, Math.max(one, other));
            }
        }
        return enter < leave;
    }
}
