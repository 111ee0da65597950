package dapple.light.geometry;

/**
 * What an upright cylinder hides. A way touches it at its side, where it passes the axis at the radius, or at a rim,
 * where it crosses the plane of the rim at the radius.
 */
final class CylinderShade implements Shade {
    private final Vec base;
    private final double low;
    private final double high;
    private final double radius;
    private final RoundShadow round = new RoundShadow();
    private Vec place = Vec.UP;

    CylinderShade(Vec base, double height, double radius) {
        this.base = base;
        this.low = base.z() + Solid.TOUCH;
        this.high = base.z() + height - Solid.TOUCH;
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
        touchRim(low - place.z(), toA, alongSegment);
        touchRim(high - place.z(), toA, alongSegment);
        return round.find(share -> hides(a.plus(alongSegment.times(share))), shadow);
    }

    /** With w from the axis to the place, and the way d: (d × w)² = r² d², all seen from above. */
    private void touchSide(Vec toA, Vec along) {
        double x = place.x() - base.x();
        double y = place.y() - base.y();
        double square = radius * radius;
        double atA = toA.x() * y - toA.y() * x;
        double change = along.x() * y - along.y() * x;
        round.touches(
                change * change - square * (along.x() * along.x() + along.y() * along.y()),
                2 * (change * atA - square * (along.x() * toA.x() + along.y() * toA.y())),
                atA * atA - square * (toA.x() * toA.x() + toA.y() * toA.y()));
    }

    /** With the rise to the plane of the rim and the way d: (w d_z + rise · d)² = r² d_z², all seen from above. */
    private void touchRim(double rise, Vec toA, Vec along) {
        double x = place.x() - base.x();
        double y = place.y() - base.y();
        double atX = x * toA.z() + rise * toA.x();
        double atY = y * toA.z() + rise * toA.y();
        double changeX = x * along.z() + rise * along.x();
        double changeY = y * along.z() + rise * along.y();
        double square = radius * radius;
        round.touches(
                changeX * changeX + changeY * changeY - square * along.z() * along.z(),
                2 * (changeX * atX + changeY * atY - square * along.z() * toA.z()),
                atX * atX + atY * atY - square * toA.z() * toA.z());
    }

    /** Whether the part of the way between base and top comes nearer to the axis than the radius. */
    @Override
    public boolean hides(Vec point) {
        double rise = point.z() - place.z();
        double toLow = low - place.z();
        double toHigh = high - place.z();
        double enter = rise == 0 ? (toLow < 0 ? 0 : 2) : Math.max(0, Math.min(toLow / rise, toHigh / rise));
        double leave = rise == 0 ? (toHigh > 0 ? 1 : -1) : Math.min(1, Math.max(toLow / rise, toHigh / rise));
        if (!(enter < leave)) {
            return false;
        }
        double wayX = point.x() - place.x();
        double wayY = point.y() - place.y();
        double apartX = base.x() - place.x();
        double apartY = base.y() - place.y();
        double level = wayX * wayX + wayY * wayY;
        double nearest = level > 0 ? (wayX * apartX + wayY * apartY) / level : enter;
        double share = Math.max(enter, Math.min(leave, nearest));
        double x = share * wayX - apartX;
        double y = share * wayY - apartY;
        return x * x + y * y < radius * radius;
    }
}
