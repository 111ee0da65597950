package dapple.light.zone;

import java.util.BitSet;
import java.util.function.IntToDoubleFunction;

/**
 * How much the light varies within discs of one size: half the difference between the most and the least in a disc,
 * over their middle, (most − least)/(most + least).
 */
final class Evenness {
    private final Sheet sheet;
    private final double radius;
    private final BitSet middles;
    private final double[] most;
    private final double[] least;
    private int best = -1;
    private double variation = Double.POSITIVE_INFINITY;

    private Evenness(Sheet sheet, double radius, BitSet middles) {
        this.sheet = sheet;
        this.radius = radius;
        this.middles = middles;
        this.most = new double[sheet.size()];
        this.least = new double[sheet.size()];
    }

    /**
     * The most even of some discs.
     *
     * @param radius of every disc, m
     * @param middles indices of their middles, at least one; every disc lies inside the sheet
     * @param amounts by index, known everywhere in the discs
     */
    static Evenness among(Sheet sheet, double radius, BitSet middles, IntToDoubleFunction amounts) {
        Evenness evenness = new Evenness(sheet, radius, middles);
        middles.stream().forEach(index -> evenness.least[index] = Double.POSITIVE_INFINITY);
        for (int v = 0; v < sheet.countV(); v++) {
            evenness.row(v, amounts);
        }
        evenness.choose();
        return evenness;
    }

    /** Adds what one row contributes to the discs that it crosses. */
    private void row(int v, IntToDoubleFunction amounts) {
        int reach = (int) Math.floor(radius / sheet.stepV() + 1e-9);
        int from = Math.max(0, v - reach);
        int to = Math.min(sheet.countV() - 1, v + reach);
        int next = middles.nextSetBit(from * sheet.countU());
        if (next < 0 || sheet.v(next) > to) {
            return;
        }
        Extremes extremes = new Extremes(sheet.countU(), u -> amounts.applyAsDouble(v * sheet.countU() + u));
        for (int ofMiddles = sheet.v(next); ofMiddles <= to; ofMiddles++) {
            add(extremes, v, ofMiddles);
        }
    }

    /** Adds what a row contributes to the discs whose middles lie in another: their chords there are equally wide. */
    private void add(Extremes extremes, int v, int ofMiddles) {
        double away = (ofMiddles - v) * sheet.stepV();
        double half = Math.sqrt(Math.max(0, radius * radius - away * away));
        int wide = (int) Math.floor(half / sheet.stepU() + 1e-9);
        Extremes.Stretch stretch = extremes.of(2 * wide + 1);
        int begin = ofMiddles * sheet.countU();
        int end = begin + sheet.countU();
        for (int middle = middles.nextSetBit(begin); middle >= 0 && middle < end; ) {
            int after = middles.nextClearBit(middle);
            for (; middle < Math.min(end, after); middle++) {
                most[middle] = Math.max(most[middle], stretch.most(middle - begin - wide));
                least[middle] = Math.min(least[middle], stretch.least(middle - begin - wide));
            }
            middle = middle < end ? middles.nextSetBit(middle) : -1;
        }
    }

    private void choose() {
        middles.stream().forEach(index -> {
            double found = most[index] > 0 ? (most[index] - least[index]) / (most[index] + least[index]) : 0;
            if (found < variation) {
                variation = found;
                best = index;
            }
        });
    }

    /** The middle of the most even disc, the first of several. */
    int middle() {
        return best;
    }

    /** Of that disc, 0 to 1. */
    double variation() {
        return variation;
    }

    /** The extremes of any stretch of a row: of stretches of 1, 2, 4 … places, of which two make up any other. */
    private static final class Extremes {
        private final double[][] highs;
        private final double[][] lows;

        Extremes(int count, IntToDoubleFunction amounts) {
            int levels = 32 - Integer.numberOfLeadingZeros(count);
            this.highs = new double[levels][count];
            this.lows = new double[levels][count];
            for (int at = 0; at < count; at++) {
                highs[0][at] = amounts.applyAsDouble(at);
                lows[0][at] = highs[0][at];
            }
            for (int level = 1; level < levels; level++) {
                int half = 1 << (level - 1);
                for (int at = 0; at + 2 * half <= count; at++) {
                    highs[level][at] = Math.max(highs[level - 1][at], highs[level - 1][at + half]);
                    lows[level][at] = Math.min(lows[level - 1][at], lows[level - 1][at + half]);
                }
            }
        }

        /** Stretches of so many places. */
        Stretch of(int count) {
            int level = 31 - Integer.numberOfLeadingZeros(count);
            return new Stretch(highs[level], lows[level], count - (1 << level));
        }

        /** Stretches of one length. */
        private static final class Stretch {
            private final double[] highs;
            private final double[] lows;

            /** Where the second of the two begins that make up each, after the first. */
            private final int second;

            Stretch(double[] highs, double[] lows, int second) {
                this.highs = highs;
                this.lows = lows;
                this.second = second;
            }

            double most(int from) {
                return Math.max(highs[from], highs[from + second]);
            }

            double least(int from) {
                return Math.min(lows[from], lows[from + second]);
            }
        }
    }
}
