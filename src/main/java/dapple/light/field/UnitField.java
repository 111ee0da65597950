package dapple.light.field;

import dapple.light.cover.Filter;
import dapple.light.field.Quadrature.Goal;
import dapple.light.geometry.Hull;
import dapple.light.geometry.ShadowBounds;
import dapple.light.geometry.Solid;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Quantity;
import java.util.List;

/**
 * The light of one lamp with an emission of 1, at one place at a time. Not for two threads at once: each has its own.
 */
final class UnitField {
    /** Accuracy of the rough value that a shaded one is measured by. */
    private static final double ROUGH = 0.02;

    /** What is deeper in shade than this share of the unshaded value need not be known more closely. */
    private static final double DEEP_SHADE = 0.01;

    /** The share of the accuracy that the chords of a source may use up. */
    private static final double OF_CHORDS = 0.3;

    /** The share of the accuracy that is left for the sum across the chords; the rest is for these and the breaks. */
    private static final double OF_SUM = 0.6;

    /** A source is narrow below this share of the distance at which its light falls off. */
    private static final double NARROW = 0.3;

    /** Breaks are found as closely as this share of the accuracy, of the width of the source. */
    private static final double OF_BREAKS = 0.0005;

    private final Emitter emitter;
    private final Paths paths;
    private final ChordLight chords;
    private final FaceCubature faces;
    private final Quadrature across = new Quadrature();
    private final Breaks breaks = new Breaks();
    private final Tally light = new Tally();
    private double floor;

    /**
     * The field of one lamp.
     *
     * @param bounds of what each solid may hide of it, in the order of the solids
     */
    UnitField(Emitter emitter, List<Solid> solids, List<ShadowBounds> bounds, List<Filter> filters) {
        this.emitter = emitter;
        this.paths = new Paths(emitter.hull(), solids, bounds, filters);
        this.chords = new ChordLight(paths);
        this.faces = new FaceCubature(paths, chords);
    }

    Hull hull() {
        return emitter.hull();
    }

    /** The value that the error of the last answer is measured by at least: a share of the unshaded one. */
    double floor() {
        return floor;
    }

    /**
     * Adds the light of the lamp.
     *
     * @param accuracy largest relative error that is accepted
     * @param others what the error is measured by at least, because other lamps give more
     * @return the estimated error of what the view asks
     */
    double light(Vec place, Quantity quantity, View view, double accuracy, double others, Tally into) {
        paths.choose(place, quantity);
        floor = 0;
        if (paths.isDark()) {
            return 0;
        }
        if (paths.isShaded()) {
            floor = DEEP_SHADE * unshaded(view);
        }
        light.clear();
        double error = gather(view, accuracy, Math.max(floor, others) / paths.share);
        into.add(light, paths.share);
        return error * paths.share;
    }

    /** More than what arrives at a place in any view. */
    double most(Vec place) {
        return emitter.most(place);
    }

    /** Roughly what would arrive at the last place with no solid between. */
    private double unshaded(View view) {
        paths.forgetSolids();
        light.clear();
        gather(view, ROUGH, 0);
        paths.recallSolids();
        return paths.share * Math.abs(view.figure(light));
    }

    private double gather(View view, double accuracy, double least) {
        boolean isWhole = view.isWholeIn(emitter.hull(), paths.place);
        if (isWhole && paths.isEven()) {
            double error = whole(view, accuracy);
            if (error >= 0) {
                return error;
            }
        }
        return byChords(view, isWhole, accuracy, least);
    }

    /** A source of which nothing is hidden or cut off. */
    private double whole(View view, double accuracy) {
        if (paths.slantedCount == 0) {
            double error = emitter.open(paths.place, view, accuracy, light);
            if (error >= 0) {
                return error;
            }
        }
        return emitter instanceof Reflector face && face.isSmall(paths.place)
                ? faces.add(face, view, accuracy, light)
                : Emitter.UNKNOWN;
    }

    private double byChords(View view, boolean isWhole, double accuracy, double least) {
        Emitter.Seen seen = emitter.from(paths.place);
        chords.look(view, !isWhole);
        if (emitter instanceof Tube || emitter instanceof Point) {
            seen.chord(0, chords, accuracy, light);
            return chords.error();
        }
        double low = seen.low();
        double high = seen.high();
        if (!(high > low)) {
            return 0;
        }
        Goal goal = new Goal(
                view, OF_SUM * accuracy, least, seen, Goal.USUAL_DOUBT, seen.width() < NARROW * seen.fallOff());
        Slices slices = new Chords(seen, OF_CHORDS * accuracy);
        double error;
        if (isWhole && paths.isEven() && !hasEdges()) {
            breaks.near(seen);
            error = across.integrate(slices, breaks, goal, light);
        } else {
            breaks.find(chords, seen, paths.partialCount > 0 || hasEdges(), paths.thinnest(), OF_BREAKS * accuracy);
            error = across.integrate(slices, breaks, goal, light);
            error += breaks.pieces() * OF_BREAKS / DEEP_SHADE * accuracy * floor / paths.share;
        }
        double ofChords = chords.error() > 0 ? OF_CHORDS * accuracy * Math.abs(view.figure(light)) : 0;
        return error + ofChords;
    }

    /** Whether the beam itself has edges where its chords stop changing smoothly. */
    private boolean hasEdges() {
        return emitter instanceof Reflector face && !face.isWithinEdges(paths.place);
    }

    /** The chords of a source as slices. */
    private final class Chords implements Slices {
        private final Emitter.Seen seen;
        private final double accuracy;

        Chords(Emitter.Seen seen, double accuracy) {
            this.seen = seen;
            this.accuracy = accuracy;
        }

        @Override
        public void light(double at, Tally into) {
            seen.chord(at, chords, accuracy, into);
        }

        @Override
        public long pattern() {
            return chords.pattern();
        }
    }

    /**
     * The light as a few beams, roughly: enough to look for the plane that has most.
     *
     * @param scale strength of the lamp
     */
    void beams(Vec place, Quantity quantity, double scale, Beams into) {
        paths.choose(place, quantity);
        if (paths.isDark()) {
            return;
        }
        chords.look(View.VECTOR, false);
        Emitter.Seen seen = emitter.from(place);
        double range = seen.high() - seen.low();
        int slices = Beams.steps(seen.width() / emitter.hull().distance(place));
        for (int slice = 0; slice < slices && range > 0; slice++) {
            double from = seen.low() + range * slice / slices;
            double to = seen.low() + range * (slice + 1) / slices;
            double weight = scale * paths.share * seen.weight(from, to);
            chords.sample(seen, (from + to) / 2, weight, into);
        }
    }
}
