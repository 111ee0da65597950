package dapple.light.field;

import dapple.light.geometry.Vec;

/** An axis as seen from a place: the perpendicular from the place to it, and where along the axis its middle lies. */
final class Perpendicular {
    private final double x;
    private final double y;
    private final double z;
    private final double distance;
    private final double along;

    Perpendicular(Vec middle, Vec axis, Vec place) {
        double wayX = middle.x() - place.x();
        double wayY = middle.y() - place.y();
        double wayZ = middle.z() - place.z();
        along = wayX * axis.x() + wayY * axis.y() + wayZ * axis.z();
        double acrossX = wayX - along * axis.x();
        double acrossY = wayY - along * axis.y();
        double acrossZ = wayZ - along * axis.z();
        distance = Math.sqrt(acrossX * acrossX + acrossY * acrossY + acrossZ * acrossZ);
        double scale = distance > 0 ? 1 / distance : 0;
        x = scale * acrossX;
        y = scale * acrossY;
        z = scale * acrossZ;
    }

    /** Direction of the perpendicular from the place to the axis, of length 1; no direction on the axis. */
    double x() {
        return x;
    }

    double y() {
        return y;
    }

    double z() {
        return z;
    }

    /** Component of a direction along the perpendicular. */
    double towards(Vec direction) {
        return x * direction.x() + y * direction.y() + z * direction.z();
    }

    /** Length of the perpendicular, m. */
    double distance() {
        return distance;
    }

    /** Where the middle lies along the axis, from the foot of the perpendicular, m. */
    double along() {
        return along;
    }
}
