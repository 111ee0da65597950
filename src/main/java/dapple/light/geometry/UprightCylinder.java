package dapple.light.geometry;

/** A cylinder that stands on its base. */
public final class UprightCylinder implements Solid {
    private final Vec base;
    private final double height;
    private final double radius;
    private final Bounds bounds;

    private UprightCylinder(Vec base, double height, double radius) {
        this.base = base;
        this.height = height;
        this.radius = radius;
        this.bounds = new Bounds(
                new Vec(base.x() - radius, base.y() - radius, base.z()),
                new Vec(base.x() + radius, base.y() + radius, base.z() + height));
    }

    /**
     * A cylinder by the middle of its base.
     *
     * @param height above 0, m
     * @param radius above 0, m
     */
    public static UprightCylinder of(Vec base, double height, double radius) {
        boolean sized =
                height > 0 && height < Double.POSITIVE_INFINITY && radius > 0 && radius < Double.POSITIVE_INFINITY;
        if (!sized || !base.isFinite()) {
            throw new IllegalArgumentException("a cylinder must have a size, was " + height + " by " + radius);
        }
        return new UprightCylinder(base, height, radius);
    }

    @Override
    public boolean holds(Vec place) {
        return place.z() > base.z() + TOUCH
                && place.z() < base.z() + height - TOUCH
                && Math.hypot(place.x() - base.x(), place.y() - base.y()) < radius - TOUCH;
    }

    @Override
    public Bounds bounds() {
        return bounds;
    }

    @Override
    public boolean shadow(Vec from, Vec a, Vec b, Shadow shadow) {
        Vec p = a.minus(from);
        Vec q = b.minus(from);
        shadow.begin();
        boolean reaches = shadow.keep(base.z() + height - TOUCH - from.z(), p.z(), q.z())
                && shadow.keep(from.z() - base.z() - TOUCH, -p.z(), -q.z())
                && shadow.measure();
        Vec along = b.minus(a);
        return reaches
                && RoundShadow.interval(
                        share -> gap(from, a.plus(along.times(share))), shadow.low(), shadow.high(), shadow);
    }

    @Override
    public boolean blocks(Vec from, Vec to) {
        return gap(from, to) < 0;
    }

    /** Distance from the axis, less the radius, of the part of a way that lies between base and top. */
    private double gap(Vec from, Vec to) {
        double rise = to.z() - from.z();
        double low = base.z() + TOUCH - from.z();
        double high = base.z() + height - TOUCH - from.z();
        double enter = rise == 0 ? (low < 0 ? 0 : 2) : Math.max(0, Math.min(low / rise, high / rise));
        double leave = rise == 0 ? (high > 0 ? 1 : -1) : Math.min(1, Math.max(low / rise, high / rise));
        if (enter > leave) {
            return Double.POSITIVE_INFINITY;
        }
        double wayX = to.x() - from.x();
        double wayY = to.y() - from.y();
        double apartX = base.x() - from.x();
        double apartY = base.y() - from.y();
        double level = wayX * wayX + wayY * wayY;
        double nearest = level > 0 ? (wayX * apartX + wayY * apartY) / level : enter;
        double share = Math.max(enter, Math.min(leave, nearest));
        return Math.hypot(share * wayX - apartX, share * wayY - apartY) - (radius - TOUCH);
    }
}
