package dapple.light.geometry;

import java.util.List;

/** A rod with round ends: everything within a radius of a segment. */
public final class Capsule implements Solid {
    private final Vec from;
    private final Vec to;
    private final double radius;
    private final Bounds bounds;

    private Capsule(Vec from, Vec to, double radius) {
        this.from = from;
        this.to = to;
        this.radius = radius;
        Vec reach = new Vec(radius, radius, radius);
        this.bounds = Bounds.around(List.of(from.minus(reach), from.plus(reach), to.minus(reach), to.plus(reach)));
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

    public Vec from() {
        return from;
    }

    public Vec to() {
        return to;
    }

    public double radiusMetres() {
        return radius;
    }

    @Override
    public boolean holds(Vec place) {
        return shade().hides(place, place);
    }

    @Override
    public Bounds bounds() {
        return bounds;
    }

    @Override
    public Hull hull() {
        Vec way = to.minus(from);
        Vec along = way.length() > 0 ? way.unit() : Vec.UP;
        Vec side = along.anyPerpendicular();
        return Hull.block(
                from.plus(to).times(0.5),
                along.times(way.length() / 2 + radius),
                side.times(radius),
                along.cross(side).times(radius));
    }

    @Override
    public CapsuleShade shade() {
        return new CapsuleShade(from, to, radius);
    }
}
