package dapple.light.field;

import dapple.light.geometry.Vec;
import java.util.List;

/**
 * What is asked of the light at a place: on a plane facing a direction, from all round, or as a vector.
 *
 * @param facing direction of the plane, of length 1; not used by the others
 */
record View(Kind kind, Vec facing) {
    enum Kind {
        /** Planar irradiance: light from behind the plane counts nothing. */
        PLANE,
        /** Scalar irradiance: no cosine. */
        ROUND,
        /** The vector sum of all light, none of it clipped. */
        VECTOR
    }

    static final View ROUND = new View(Kind.ROUND, Vec.UP);
    static final View VECTOR = new View(Kind.VECTOR, Vec.UP);

    static View facing(Vec direction) {
        return new View(Kind.PLANE, direction);
    }

    boolean isClipped() {
        return kind == Kind.PLANE;
    }

    /** Whether everything within a hull lies in front of the plane, so that nothing of it is cut off. */
    boolean isWholeIn(List<Vec> hull, Vec place) {
        if (kind != Kind.PLANE) {
            return true;
        }
        for (int index = 0; index < hull.size(); index++) {
            if (!(hull.get(index).minus(place).dot(facing) > 0)) {
                return false;
            }
        }
        return true;
    }

    /** The figure that accuracy is asked of. */
    double figure(Tally tally) {
        return switch (kind) {
            case PLANE -> tally.x * facing.x() + tally.y * facing.y() + tally.z * facing.z();
            case ROUND -> tally.round;
            case VECTOR -> Math.sqrt(tally.x * tally.x + tally.y * tally.y + tally.z * tally.z);
        };
    }

    /** How far two sums differ in what is asked. */
    double difference(Tally one, Tally other) {
        if (kind == Kind.VECTOR) {
            double x = one.x - other.x;
            double y = one.y - other.y;
            double z = one.z - other.z;
            return Math.sqrt(x * x + y * y + z * z);
        }
        return Math.abs(figure(one) - figure(other));
    }
}
