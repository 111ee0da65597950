package dapple.light.field;

import dapple.light.geometry.Hull;
import dapple.light.geometry.Vec;

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

    /** Whether the scalar irradiance is wanted, for itself or beside the vector. */
    boolean countsRound() {
        return kind != Kind.PLANE;
    }

    /** Whether everything within a hull lies in front of the plane, so that nothing of it is cut off. */
    boolean isWholeIn(Hull hull, Vec place) {
        return kind != Kind.PLANE || hull.least(facing) > place.dot(facing);
    }

    /** What the view counts of light that comes along a way, from 0 to 1. */
    double obliqueness(Vec way) {
        return kind == Kind.PLANE ? Math.abs(way.dot(facing)) / way.length() : 1;
    }

    /** The figure of light with a vector across and along an axis and an amount from all round, without its sign. */
    double size(Perpendicular axis, double across, Vec along, double lengthwise, double round) {
        return switch (kind) {
            case PLANE -> Math.abs(across * axis.towards(facing) + lengthwise * along.dot(facing));
            case ROUND -> Math.abs(round);
            case VECTOR -> Math.sqrt(across * across + lengthwise * lengthwise);
        };
    }

    /** The figure that accuracy is asked of. */
    double figure(Tally tally) {
        return switch (kind) {
            case PLANE -> tally.x * facing.x() + tally.y * facing.y() + tally.z * facing.z();
            case ROUND -> tally.round;
            case VECTOR -> tally.length();
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
