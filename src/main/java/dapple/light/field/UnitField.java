package dapple.light.field;

import dapple.light.field.Quadrature.Allowed;
import dapple.light.geometry.Bounds;
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

    /** Gauss rule of three nodes. */
    private static final double[] THIRDS = {-Math.sqrt(0.6), 0, Math.sqrt(0.6)};

    private static final double[] WEIGHTS = {5.0 / 9, 8.0 / 9, 5.0 / 9};
    private static final int PARTS = 6;

    /** Asked no closer than this, a shaded source is tried with the shorter rule first. */
    private static final double COARSE = 0.002;

    private static final FaceRule[] BETTER = {FaceRule.SEVEN, FaceRule.TWELVE};

    private final Emitter emitter;
    private final Bounds bounds;
    private final List<Vec> hull;
    private final Paths paths;
    private final ChordLight chords;
    private final Quadrature across = new Quadrature();
    private final Tally rough = new Tally();
    private final Tally coarse = new Tally();
    private final Tally fine = new Tally();
    private double floor;

    UnitField(Emitter emitter, List<Solid> solids, List<Screen> screens) {
        this.emitter = emitter;
        this.bounds = emitter.bounds();
        this.hull = emitter.hull();
        this.paths = new Paths(solids, screens);
        this.chords = new ChordLight(paths);
    }

    /**
     * Adds the light of the lamp.
     *
     * @param accuracy largest relative error that is accepted
     * @return the estimated error of what the view asks
     */
    double light(Vec place, Quantity quantity, View view, double accuracy, Tally into) {
        chords.look(view);
        floor = 0;
        paths.choose(place, bounds, hull, quantity);
        if (paths.isDark()) {
            floor = DEEP_SHADE * unshaded(place, quantity, view);
            return 0;
        }
        if (paths.isShaded()) {
            floor = DEEP_SHADE * unshaded(place, quantity, view);
            paths.choose(place, bounds, hull, quantity);
        }
        return integrate(place, view, accuracy, floor, into);
    }

    /** The value that the error of the last answer is measured by at least: a share of the unshaded one. */
    double floor() {
        return floor;
    }

    /** Roughly what would arrive with no solid between. */
    double unshaded(Vec place, Quantity quantity, View view) {
        chords.look(view);
        paths.choose(place, bounds, hull, quantity);
        paths.solidCount = 0;
        rough.clear();
        integrate(place, view, ROUGH, 0, rough);
        return Math.abs(view.figure(rough));
    }

    List<Vec> hull() {
        return hull;
    }

    /** The lamp alone, with nothing between. */
    double alone(Vec place, View view, double accuracy, Tally into) {
        chords.look(view);
        paths.clear(place, Quantity.UV_INDEX);
        return integrate(place, view, accuracy, 0, into);
    }

    /**
     * The light as a few beams, roughly: enough to look for the plane that has most.
     *
     * @param scale strength of the lamp
     */
    void beams(Vec place, Quantity quantity, double scale, List<Vec> into) {
        chords.look(View.VECTOR);
        paths.choose(place, bounds, hull, quantity);
        Emitter.Seen seen = emitter.from(place);
        double low = seen.low();
        double high = seen.high();
        boolean point = emitter instanceof Emitter.Point;
        boolean single = point || emitter instanceof Emitter.Tube;
        int slices = single ? 1 : THIRDS.length;
        int parts = point ? 1 : PARTS;
        for (int slice = 0; slice < slices && high > low; slice++) {
            double at = single ? 0 : (low + high) / 2 + (high - low) / 2 * THIRDS[slice];
            double weight = single ? scale : scale * (high - low) / 2 * WEIGHTS[slice];
            for (int part = 0; part < parts; part++) {
                chords.window((double) part / parts, (part + 1.0) / parts);
                rough.clear();
                seen.chord(at, chords, ROUGH, rough);
                if (rough.round > 0) {
                    into.add(new Vec(weight * rough.x, weight * rough.y, weight * rough.z));
                }
            }
        }
    }

    private double integrate(Vec place, View view, double accuracy, double least, Tally into) {
        Emitter.Seen seen = emitter.from(place);
        if (emitter instanceof Emitter.Tube || emitter instanceof Emitter.Point) {
            seen.chord(0, chords, accuracy, into);
            return 0;
        }
        double low = seen.low();
        double high = seen.high();
        if (!(high > low)) {
            return 0;
        }
        boolean shaded = paths.isShaded();
        if (!shaded && emitter instanceof Emitter.Reflector face && paths.isEven(hull)) {
            double error = cubature(face, view, accuracy, into);
            if (error >= 0) {
                return error;
            }
        }
        return across.integrate(
                (at, slice) -> seen.chord(at, chords, accuracy / 10, slice),
                low,
                high,
                view,
                shaded && accuracy < COARSE ? Rule.FIFTEEN : Rule.SEVEN,
                shaded ? 2 : 1,
                new Allowed(accuracy, least),
                into);
    }

    /**
     * A small or distant face by rules of rising degree until two of them agree; the difference is far more than the
     * error of the better one.
     *
     * @return the difference, −1 if none was small enough
     */
    private double cubature(Emitter.Reflector face, View view, double accuracy, Tally into) {
        coarse.clear();
        face.points(FaceRule.FOUR, chords, coarse);
        for (FaceRule rule : BETTER) {
            fine.clear();
            face.points(rule, chords, fine);
            double difference = view.difference(coarse, fine);
            if (difference <= accuracy * Math.abs(view.figure(fine)) && view.isWholeIn(hull, paths.place)) {
                into.add(fine, 1);
                return difference;
            }
            coarse.set(fine);
        }
        return -1;
    }
}
