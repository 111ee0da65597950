package dapple.light.geometry;

/** A rod with round ends: everything within a radius of a segment. */
public final class Capsule implements Solid {
    private final Vec start;
    private final Vec way;
    private final double radius;
    private final Bounds bounds;

    private Capsule(Vec from, Vec to, double radius) {
        this.start = from;
        this.way = to.minus(from);
        this.radius = radius;
        Vec reach = new Vec(radius, radius, radius);
        this.bounds = Bounds.around(from.minus(reach), from.plus(reach), to.minus(reach), to.plus(reach));
    }

    /**
     * A capsule around a segment, which may be a point.
     *
     * @param radius above 0, m
     */
    public static Capsule of(Vec from, Vec to, double radius) {
        if (!(radius > 0 && radius < Double.POSITIVE_INFINITY) || !from.isFinite() || !to.isFinite()) {
            throw new IllegalArgumentException("a capsule must have a radius, was " + radius);
        }
        return new Capsule(from, to, radius);
    }

    @Override
    public boolean holds(Vec place) {
        return gap(place, place) < 0;
    }

    @Override
    public Bounds bounds() {
        return bounds;
    }

    @Override
    public boolean shadow(Vec from, Vec a, Vec b, Shadow shadow) {
        Vec along = b.minus(a);
        return RoundShadow.interval(share -> gap(from, a.plus(along.times(share))), 0, 1, shadow);
    }

    @Override
    public boolean blocks(Vec from, Vec to) {
        return gap(from, to) < 0;
    }

    /** Distance between the two segments less the radius: the closest points, each held on its segment. */
    private double gap(Vec from, Vec to) {
        Vec ray = to.minus(from);
        Vec apart = from.minus(start);
        double rayRay = ray.dot(ray);
        double wayWay = way.dot(way);
        double rayWay = ray.dot(way);
        double rayApart = ray.dot(apart);
        double wayApart = way.dot(apart);
        double onRay = 0;
        double determinant = rayRay * wayWay - rayWay * rayWay;
        if (determinant > 1e-14 * rayRay * wayWay) {
            onRay = clamp((rayWay * wayApart - wayWay * rayApart) / determinant);
        }
        double onWay = wayWay > 0 ? clamp((wayApart + onRay * rayWay) / wayWay) : 0;
        onRay = rayRay > 0 ? clamp((onWay * rayWay - rayApart) / rayRay) : 0;
        onWay = wayWay > 0 ? clamp((wayApart + onRay * rayWay) / wayWay) : 0;
        return apart.plus(ray.times(onRay)).minus(way.times(onWay)).length() - (radius - TOUCH);
    }

    private static double clamp(double share) {
        return Math.max(0, Math.min(1, share));
    }
}
