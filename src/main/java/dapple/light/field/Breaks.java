package dapple.light.field;

import java.util.Arrays;

/**
 * Where the light of a source's chords stops changing smoothly, because other edges begin to bound what is seen of them:
 * found by halving between chords whose patterns differ.
 */
final class Breaks {
    /** Fewest and most steps between the chords that are looked at first. */
    private static final int LEAST_STEPS = 8;

    private static final int MOST_STEPS = 64;

    /** The first and the last chord, which have no width, are looked at this share of the range inside. */
    private static final double INSIDE = 1e-6;

    private double[] places = new double[8];
    private int count;

    /**
     * Finds the places in a range, its ends among them. What is thinner than the steps may be missed, but solids cast
     * shadows wider than they are.
     *
     * @param thinnest the least thickness of what may shade, m
     * @param resolution how closely, as a share of the range
     */
    void find(ChordLight chords, Emitter.Seen seen, double thinnest, double resolution) {
        int steps = (int) Math.max(LEAST_STEPS, Math.min(MOST_STEPS, Math.ceil(seen.width() / thinnest)));
        double low = seen.low();
        double width = seen.high() - low;
        count = 0;
        add(low);
        double at = low + INSIDE * width;
        long pattern = chords.pattern(seen, at);
        for (int step = 1; step <= steps; step++) {
            double next = low + width * (step < steps ? (double) step / steps : 1 - INSIDE);
            long nextPattern = chords.pattern(seen, next);
            while (pattern != nextPattern && next - at > resolution * width) {
                at = change(chords, seen, pattern, at, next, resolution * width);
                add(at);
                pattern = chords.pattern(seen, at);
            }
            at = next;
            pattern = nextPattern;
        }
        add(seen.high());
    }

    /** The first place with another pattern, on its far side. */
    private static double change(
            ChordLight chords, Emitter.Seen seen, long pattern, double low, double high, double resolution) {
        double same = low;
        double other = high;
        while (other - same > resolution) {
            double middle = (same + other) / 2;
            if (chords.pattern(seen, middle) == pattern) {
                same = middle;
            } else {
                other = middle;
            }
        }
        return other;
    }

    private void add(double at) {
        if (count == places.length) {
            places = Arrays.copyOf(places, 2 * count);
        }
        places[count++] = at;
    }

    /** The number of pieces between the places. */
    int pieces() {
        return count - 1;
    }

    double at(int index) {
        return places[index];
    }
}
