package dapple.light.geometry;

/** A box, turned about the vertical through its centre. */
public final class Box implements Solid {
    private final Vec centre;
    private final Vec half;
    private final Vec alongX;
    private final Vec alongY;
    private final Bounds bounds;

    private Box(Vec least, Vec greatest, double yawDegrees) {
        this.centre = least.plus(greatest).times(0.5);
        this.half = greatest.minus(least).times(0.5);
        double cos = Math.cos(Math.toRadians(yawDegrees));
        double sin = Math.sin(Math.toRadians(yawDegrees));
        this.alongX = new Vec(cos, sin, 0);
        this.alongY = new Vec(-sin, cos, 0);
        this.bounds = Bounds.around(hull().corners());
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

    @Override
    public boolean holds(Vec place) {
        Vec way = place.minus(centre);
        return Math.abs(way.dot(alongX)) < half.x() - TOUCH
                && Math.abs(way.dot(alongY)) < half.y() - TOUCH
                && Math.abs(way.z()) < half.z() - TOUCH;
    }

    @Override
    public Bounds bounds() {
        return bounds;
    }

    @Override
    public Hull hull() {
        return Hull.block(centre, alongX.times(half.x()), alongY.times(half.y()), new Vec(0, 0, half.z()));
    }

    @Override
    public Shade shade() {
        return new BoxShade(
                centre,
                alongX.times(half.x() - TOUCH),
                alongY.times(half.y() - TOUCH),
                new Vec(0, 0, half.z() - TOUCH));
    }

    /** Whether the parts of the way between each pair of faces have anything in common. */
    @Override
    public boolean blocks(Vec from, Vec to) {
        Vec start = from.minus(centre);
        Vec way = to.minus(from);
        Slab slab = new Slab();
        return slab.cut(start.dot(alongX), way.dot(alongX), half.x() - TOUCH)
                && slab.cut(start.dot(alongY), way.dot(alongY), half.y() - TOUCH)
                && slab.cut(start.z(), way.z(), half.z() - TOUCH);
    }

    /** The part of a way that lies between the faces looked at so far. */
    private static final class Slab {
        private double enter;
        private double leave = 1;

        boolean cut(double start, double way, double reach) {
            if (way == 0) {
                return Math.abs(start) < reach;
            }
            double one = (-reach - start) / way;
            double other = (reach - start) / way;
            enter = Math.max(enter, Math.min(one, other));
            leave = Math.min(leave, Math.max(one, other));
            return enter < leave;
        }
    }
}
