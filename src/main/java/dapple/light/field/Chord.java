package dapple.light.field;

import dapple.light.geometry.Vec;

/** A straight piece of a source by its middle, direction of length 1 and length, m. */
record Chord(Vec middle, Vec along, double length) {
    Vec at(double share) {
        return middle.plus(along.times((share - 0.5) * length));
    }
}
