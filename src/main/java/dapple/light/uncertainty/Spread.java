package dapple.light.uncertainty;

import dapple.light.quantity.Interval;
import java.util.ArrayList;
import java.util.List;

/**
 * How far one amount may lie above and below its value. Independent contributions, each expanded (k = 2), add as
 * squares, up apart from down. Where a move changes the amount by more than {@link #STEP} times what all moves do where
 * they are least steep, it crosses an edge: then the amount is one or the other, and the interval holds both, each with
 * its own readings' uncertainty.
 */
final class Spread {
    private static final double STEP = 2;

    private final List<Probe> probes = new ArrayList<>();
    private double up;
    private double down;
    private double straight;

    /** A contribution that is the same both ways: k · u. */
    void add(double expanded) {
        up = Math.hypot(up, expanded);
        down = Math.hypot(down, expanded);
    }

    /** What comes of moves along one line. */
    void add(List<Probe> line) {
        up = Math.hypot(up, Probe.up(line));
        down = Math.hypot(down, Probe.down(line));
        straight = Math.hypot(straight, Probe.straight(line));
        probes.addAll(line);
    }

    /** Moves that may cross an edge, and count for nothing else. */
    void lookFor(List<Probe> edges) {
        probes.addAll(edges);
    }

    /** Half of the interval by the contributions that are the same both ways, before any others. */
    double expanded() {
        return up;
    }

    /** Around a value, never below 0. */
    Interval around(double value) {
        double low = value - down;
        double high = value + up;
        for (Probe probe : probes) {
            if (Math.abs(probe.difference()) > STEP * straight) {
                low = Math.min(low, probe.low(value));
                high = Math.max(high, probe.high(value));
            }
        }
        return new Interval(Math.max(0, low), Math.min(Double.MAX_VALUE, high));
    }
}
