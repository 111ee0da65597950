package dapple.light.field;

import dapple.light.geometry.Hull;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Quantity;
import java.util.List;

/**
 * The light of one lamp at the last place that was asked for, in each of its channels: as vectors, and in the view that
 * was asked for last. For one thread.
 */
final class LampLight {
    private static final int UNNAMED = -1;

    /** The share of what a lamp may err by below which it is left out. */
    private static final double OF_NEGLIGIBLE = 0.1;

    private final UnitField unit;
    private final List<Quantity> ofChannels;
    private final int[] channels;
    private final double[] scales;

    /** More than what a lamp gives that does not matter; NaN where it does. */
    private double negligible = Double.NaN;

    /** What this lamp's error is measured by at least: a part of what others give at the place. */
    private double others;

    private final Seen[] vectors;
    private final Seen[] views;

    /**
     * The light of a lamp.
     *
     * @param quantities that are asked for, by their row
     */
    LampLight(LampField lamp, UnitField unit, List<Quantity> quantities) {
        this.unit = unit;
        this.ofChannels = lamp.channels();
        this.channels = quantities.stream()
                .mapToInt(quantity -> lamp.names(quantity) ? lamp.channel(quantity) : UNNAMED)
                .toArray();
        this.scales = quantities.stream().mapToDouble(lamp::scale).toArray();
        this.vectors = new Seen[ofChannels.size()];
        this.views = new Seen[vectors.length];
        for (int channel = 0; channel < vectors.length; channel++) {
            vectors[channel] = new Seen();
            views[channel] = new Seen();
        }
    }

    /** What one view shows of the lamp with an emission of 1. */
    private static final class Seen {
        private final Tally light = new Tally();
        private double error;
        private double floor;
    }

    /** A sum that is under way over lamps, for one quantity. */
    static final class Sum {
        final Tally light = new Tally();
        double error;
        double floor;
    }

    Hull hull() {
        return unit.hull();
    }

    boolean names(int row) {
        return channels[row] != UNNAMED;
    }

    boolean lights(int row) {
        return scales[row] > 0 && !isNegligible();
    }

    /** Looks as vectors, in all channels. */
    void lookAsVectors(Vec place, double accuracy) {
        look(vectors, place, View.VECTOR, accuracy);
    }

    /** Looks in a view, in all channels. */
    void look(Vec place, View view, double accuracy) {
        look(views, place, view, accuracy);
    }

    private void look(Seen[] into, Vec place, View view, double accuracy) {
        for (int channel = 0; channel < into.length; channel++) {
            look(into[channel], channel, place, view, accuracy);
        }
    }

    /**
     * Judges how well the lamp must be known at a place beside others, and whether at all.
     *
     * @param part of the sum of all lamps that this one may err by, times the accuracy; 0 to look at it for itself
     * @param amounts the most light that any of the others gives, by row
     */
    void judge(Vec place, double part, double accuracy, double[] amounts) {
        negligible = Double.NaN;
        others = 0;
        if (part > 0) {
            double least = Double.POSITIVE_INFINITY;
            for (int row = 0; row < scales.length; row++) {
                least = scales[row] > 0 ? Math.min(least, amounts[row] / scales[row]) : least;
            }
            others = part * least;
            double most = others > 0 ? unit.most(place) : Double.POSITIVE_INFINITY;
            negligible = most <= OF_NEGLIGIBLE * accuracy * others ? most : Double.NaN;
        }
    }

    boolean isNegligible() {
        return !Double.isNaN(negligible);
    }

    /** Raises amounts, by row, to what the lamp gives as vectors or in the last view. */
    void raise(double[] amounts, View view, boolean ofVectors) {
        for (int row = 0; row < scales.length; row++) {
            if (scales[row] > 0) {
                amounts[row] = Math.max(amounts[row], amount(row, view, ofVectors));
            }
        }
    }

    /** Looks in a view, in the channel of one quantity. */
    void look(int row, Vec place, View view, double accuracy) {
        look(views[channels[row]], channels[row], place, view, accuracy);
    }

    private void look(Seen seen, int channel, Vec place, View view, double accuracy) {
        seen.light.clear();
        if (isNegligible()) {
            seen.error = negligible;
            seen.floor = 0;
            return;
        }
        seen.error = unit.light(place, ofChannels.get(channel), view, accuracy, others, seen.light);
        seen.floor = unit.floor();
    }

    void addVector(int row, Sum into) {
        add(vectors, row, into);
    }

    void add(int row, Sum into) {
        add(views, row, into);
    }

    private void add(Seen[] all, int row, Sum into) {
        double scale = scales[row];
        if (scale > 0) {
            Seen seen = all[channels[row]];
            into.light.add(seen.light, scale);
            into.error += scale * seen.error;
            into.floor += scale * seen.floor;
        }
    }

    /** What a view has of the vectors, or of what was looked at last. */
    double amount(int row, View view, boolean ofVectors) {
        Seen seen = (ofVectors ? vectors : views)[channels[row]];
        return Math.max(0, scales[row] * view.figure(seen.light));
    }

    void beams(Vec place, int row, Beams into) {
        unit.beams(place, ofChannels.get(channels[row]), scales[row], into);
    }
}
