package dapple.light.geometry;

/**
 * What a capsule hides. A way touches it at its side, where it passes the axis at the radius, or at an end, where it
 * passes the middle of the end at the radius.
 */
final class CapsuleShade implements Shade {
    /** Ways this near to parallel, as the square of a sine, are held for parallel. */
    private static final double PARALLEL = 1e-14;

    private final Vec start;
    private final Vec end;
    private final Vec axis;
    private final double radius;
    private final RoundShadow round = new RoundShadow();
    private Vec place = Vec.UP;

    CapsuleShade(Vec from, Vec to, double radius) {
        this.start = from;
        this.end = to;
        this.axis = to.minus(from);
        this.radius = radius - Solid.TOUCH;
    }

    @Override
    public void lookFrom(Vec from) {
        place = from;
    }

    @Override
    public boolean shadow(Vec a, Vec b, Shadow shadow) {
        Vec toA = a.minus(place);
        Vec alongSegment = b.minus(a);
        round.begin();
        touchSide(toA, alongSegment);
        touchEnd(start.minus(place), toA, alongSegment);
        touchEnd(end.minus(place), toA, alongSegment);
        return round.find(share -> hides(a.plus(alongSegment.times(share))), shadow);
    }

    /** With w from the axis to the place, and the way d: ((d × axis) · w)² = r² (d × axis)². */
    private void touchSide(Vec toA, Vec along) {
        Vec apart = place.minus(start);
        Vec atA = toA.cross(axis);
        Vec change = along.cross(axis);
        double square = radius * radius;
        double fromA = atA.dot(apart);
        double slope = change.dot(apart);
        round.touches(
                slope * slope - square * change.dot(change),
                2 * (slope * fromA - square * change.dot(atA)),
                fromA * fromA - square * atA.dot(atA));
    }

    /** With w to the middle of the end, and the way d: (d × w)² = r² d². */
    private void touchEnd(Vec toEnd, Vec toA, Vec along) {
        Vec atA = toA.cross(toEnd);
        Vec change = along.cross(toEnd);
        double square = radius * radius;
        round.touches(
                change.dot(change) - square * along.dot(along),
                2 * (change.dot(atA) - square * along.dot(toA)),
                atA.dot(atA) - square * toA.dot(toA));
    }

    @Override
    public boolean hides(Vec point) {
        return hides(place, point);
    }

    /** Whether two segments come nearer than the radius: the closest points, each held on its segment. */
    boolean hides(Vec from, Vec to) {
        Vec ray = to.minus(from);
        Vec apart = from.minus(start);
        double rayRay = ray.dot(ray);
        double axisAxis = axis.dot(axis);
        double rayAxis = ray.dot(axis);
        double rayApart = ray.dot(apart);
        double axisApart = axis.dot(apart);
        double onRay = 0;
        double determinant = rayRay * axisAxis - rayAxis * rayAxis;
        if (determinant > PARALLEL * rayRay * axisAxis) {
            onRay = clamp((rayAxis * axisApart - axisAxis * rayApart) / determinant);
        }
        double onAxis = axisAxis > 0 ? clamp((axisApart + onRay * rayAxis) / axisAxis) : 0;
        onRay = rayRay > 0 ? clamp((onAxis * rayAxis - rayApart) / rayRay) : 0;
        onAxis = axisAxis > 0 ? clamp((axisApart + onRay * rayAxis) / axisAxis) : 0;
        Vec between = apart.plus(ray.times(onRay)).minus(axis.times(onAxis));
        return between.dot(between) < radius * radius;
    }

    private static double clamp(double share) {
        return Math.max(0, Math.min(1, share));
    }
}
