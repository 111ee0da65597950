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
        this.bounds = Bounds.around(hull().corners());
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
    public Hull hull() {
        return Hull.block(
                base.plus(new Vec(0, 0, height / 2)),
                new Vec(radius, 0, 0),
                new Vec(0, radius, 0),
                new Vec(0, 0, height / 2));
    }

    @Override
    public Shade shade() {
        return new CylinderShade(base, height, radius);
    }
}
