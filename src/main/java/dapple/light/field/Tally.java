package dapple.light.field;

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

    void set(Tally other) {
        x = other.x;
        y = other.y;
        z = other.z;
        round = other.round;
    }
}
