package dapple.light.field;

import dapple.light.geometry.Hull;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Quantity;

/**
 * The light of one lamp at the last place that was asked for, in each of its channels: as vectors, and in the view that
 * was asked for last. For one thread.
 */
final class LampLight {
    private final LampField lamp;
    private final UnitField unit;
    private final Seen[] vectors;
    private final Seen[] views;

    LampLight(LampField lamp, UnitField unit) {
        this.lamp = lamp;
        this.unit = unit;
        this.vectors = new Seen[lamp.channels().size()];
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

    boolean names(Quantity quantity) {
        return lamp.names(quantity);
    }

    boolean lights(Quantity quantity) {
        return lamp.scale(quantity) > 0;
    }

    /** Looks as vectors, in all channels. */
    void lookAsVectors(Vec place, double accuracy) {
        for (int channel = 0; channel < vectors.length; channel++) {
            look(vectors[channel], channel, place, View.VECTOR, accuracy);
        }
    }

    /** Looks in a view, in all channels. */
    void look(Vec place, View view, double accuracy) {
        for (int channel = 0; channel < views.length; channel++) {
            look(views[channel], channel, place, view, accuracy);
        }
    }

    /** Looks in a view, in the channel of one quantity. */
    void look(Quantity quantity, Vec place, View view, double accuracy) {
        look(views[lamp.channel(quantity)], lamp.channel(quantity), place, view, accuracy);
    }

    private void look(Seen seen, int channel, Vec place, View view, double accuracy) {
        seen.light.clear();
        seen.error = unit.light(place, lamp.channels().get(channel), view, accuracy, seen.light);
        seen.floor = unit.floor();
    }

    void addVector(Quantity quantity, Sum into) {
        add(vectors, quantity, into);
    }

    void add(Quantity quantity, Sum into) {
        add(views, quantity, into);
    }

    private void add(Seen[] all, Quantity quantity, Sum into) {
        double scale = lamp.scale(quantity);
        if (scale > 0) {
            Seen seen = all[lamp.channel(quantity)];
            into.light.add(seen.light, scale);
            into.error += scale * seen.error;
            into.floor += scale * seen.floor;
        }
    }

    /** What a view has of the vectors, or of what was looked at last. */
    double amount(Quantity quantity, View view, boolean ofVectors) {
        Seen seen = (ofVectors ? vectors : views)[lamp.channel(quantity)];
        return Math.max(0, lamp.scale(quantity) * view.figure(seen.light));
    }

    void beams(Vec place, Quantity quantity, Beams into) {
        Quantity channel = lamp.channels().get(lamp.channel(quantity));
        unit.beams(place, channel, lamp.scale(quantity), into);
    }
}
