package dapple.light.field;

import java.util.Arrays;

/**
 * Where the light of a source's chords stops changing smoothly, because other edges begin to bound what is seen of them:
 * found by halving between chords whose patterns differ.
 */
final class Breaks {
    /** Fewest and most steps between the chords that are looked at first. */
    private static final int LEAST_STEPS = 4;

    /** Fewest where the corner of a filter or the edge of a beam may cut a little off. */
    private static final int LEAST_WITH_CORNERS = 8;

    private static final int MOST_STEPS = 64;

    /** The first and the last chord, which have no width, are looked at this share of the range inside. */
    private static final double INSIDE = 1e-6;

    private double[] places = new double[8];
    private int count;

    /** Breaks are set so many times the fall-off beside the nearest chord. */
    private static final double[] NEAR = {-5, -1.5, 0, 1.5, 5};

    /** A source narrower than this many times the fall-off has no such breaks. */
    private static final double WIDE = 3;

    private final double[] near = new double[NEAR.length];
    private int nearCount;

    /**
     * Finds the places in a range, its ends among them. What is thinner than the steps may be missed, but solids cast
     * shadows wider than they are.
     *
     * @param mayMeetCorners whether a filter or the beam itself has edges there
     * @param thinnest the least thickness of what may shade, m
     * @param resolution how closely, as a share of the range
     */
    void find(ChordLight chords, Emitter.Seen seen, boolean mayMeetCorners, double thinnest, double resolution) {
        begin(seen);
        int least = mayMeetCorners ? LEAST_WITH_CORNERS : LEAST_STEPS;
        int steps = (int) Math.max(least, Math.min(MOST_STEPS, Math.ceil(seen.width() / thinnest)));
        double width = seen.high() - seen.low();
        double at = seen.low() + INSIDE * width;
        long pattern = chords.pattern(seen, at);
        int passed = 0;
        for (int step = 1; step <= steps; step++) {
            double end = seen.low() + width * (step < steps ? (double) step / steps : 1 - INSIDE);
            for (; passed < nearCount && near[passed] < end; passed++) {
                pattern = search(chords, seen, at, near[passed], pattern, resolution * width);
                at = near[passed];
                add(at);
            }
            pattern = search(chords, seen, at, end, pattern, resolution * width);
            at = end;
        }
        add(seen.high());
    }

    /** Breaks where the light falls off fast beside the nearest chord, and nowhere else. */
    void near(Emitter.Seen seen) {
        begin(seen);
        for (int index = 0; index < nearCount; index++) {
            add(near[index]);
        }
        add(seen.high());
    }

    private void begin(Emitter.Seen seen) {
        count = 0;
        nearCount = 0;
        add(seen.low());
        double edge = INSIDE * (seen.high() - seen.low());
        if (seen.width() > WIDE * seen.fallOff()) {
            for (double times : NEAR) {
                double at = seen.beside(times * seen.fallOff());
                double last = nearCount > 0 ? near[nearCount - 1] : seen.low();
                if (at > last + edge && at < seen.high() - edge) {
                    near[nearCount++] = at;
                }
            }
        }
    }

    /** Sets breaks wherever the pattern changes on the way to a place; its pattern. */
    private long search(ChordLight chords, Emitter.Seen seen, double from, double to, long pattern, double resolution) {
        long last = chords.pattern(seen, to);
        double at = from;
        long here = pattern;
        while (here != last && to - at > resolution) {
            at = change(chords, seen, here, at, to, resolution);
            add(at);
            here = chords.pattern(seen, at);
        }
        return last;
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
