package dapple.light.field;

import dapple.light.geometry.Vec;

/** A running sum of light: the vector irradiance (towards the sources) and the scalar irradiance. */
final class Tally {
    double x;
    double y;
    double z;
    double round;

    void clear() {
        x = 0;
        y = 0;
        z = 0;
        round = 0;
    }

    void add(Tally other, double weight) {
        x += weight * other.x;
        y += weight * other.y;
        z += weight * other.z;
        round += weight * other.round;
    }

    /** Adds a vector. */
    void add(Vec direction, double amount) {
        x += amount * direction.x();
        y += amount * direction.y();
        z += amount * direction.z();
    }

    /** Adds a vector by its parts across and along an axis. */
    void addChord(Perpendicular view, double across, Vec along, double lengthwise) {
        x += across * view.x() + lengthwise * along.x();
        y += across * view.y() + lengthwise * along.y();
        z += across * view.z() + lengthwise * along.z();
    }

    void set(Tally other) {
        x = other.x;
        y = other.y;
        z = other.z;
        round = other.round;
    }

    void scale(double factor) {
        x *= factor;
        y *= factor;
        z *= factor;
        round *= factor;
    }

    double length() {
        return Math.sqrt(x * x + y * y + z * z);
    }
}
