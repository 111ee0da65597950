package dapple.light.field;

import dapple.light.geometry.Vec;
import java.util.Arrays;

/** Light at a place as a number of beams, each from a small part of a lamp: what is in front of a plane is their sum. */
final class Beams {
    /** A source is cut so that a beam's part fills no more than about this angle, as a tangent, */
    private static final double WIDEST = 0.25;

    /** but into no more than so many parts. */
    private static final int MOST_STEPS = 8;

    private static final int MOST_TURNS = 12;
    private static final double STILL = 1e-6;

    private double[] parts = new double[3 * 64];
    private int end;

    void clear() {
        end = 0;
    }

    /** The number of parts for a source of a size over its distance. */
    static int steps(double sizeOverDistance) {
        return (int) Math.max(1, Math.min(MOST_STEPS, Math.ceil(sizeOverDistance / WIDEST)));
    }

    /** Adds a beam along a way. */
    void add(double x, double y, double z, double amount) {
        if (!(amount > 0)) {
            return;
        }
        if (end == parts.length) {
            parts = Arrays.copyOf(parts, 2 * end);
        }
        parts[end] = amount * x;
        parts[end + 1] = amount * y;
        parts[end + 2] = amount * z;
        end += 3;
    }

    int count() {
        return end / 3;
    }

    /** The sum of the beams from one on. */
    Vec sum(int from) {
        double x = 0;
        double y = 0;
        double z = 0;
        for (int at = 3 * from; at < end; at += 3) {
            x += parts[at];
            y += parts[at + 1];
            z += parts[at + 2];
        }
        return new Vec(x, y, z);
    }

    /** The sum of the beams in front of a plane. */
    private Vec front(Vec facing) {
        double x = 0;
        double y = 0;
        double z = 0;
        for (int at = 0; at < end; at += 3) {
            if (parts[at] * facing.x() + parts[at + 1] * facing.y() + parts[at + 2] * facing.z() > 0) {
                x += parts[at];
                y += parts[at + 1];
                z += parts[at + 2];
            }
        }
        return new Vec(x, y, z);
    }

    /** What a start leads to by turning towards the light in front until that changes no more: its sum. */
    Vec climb(Vec start) {
        Vec front = start;
        for (int turn = 0; turn < MOST_TURNS && front.length() > 0; turn++) {
            Vec next = front(front);
            if (next.minus(front).length() <= STILL * next.length()) {
                return next;
            }
            front = next;
        }
        return front;
    }
}
