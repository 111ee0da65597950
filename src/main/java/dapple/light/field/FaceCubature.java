package dapple.light.field;

import dapple.light.geometry.Vec;

/**
 * A small or distant face behind filters, by points of it. Where the whole face has a short series, that times what
 * passes on the way to its middle is taken first, and the points give but the rest. Rules of rising degree are tried
 * until two of them agree: the better one errs less than they differ, by as much as they agree better than the two
 * before.
 */
final class FaceCubature {
    /** How far a rule may be trusted to be better than the one before it. */
    private static final double CAUTION = 10;

    /** The share of the accuracy that the series may use up. */
    private static final double OF_SERIES = 0.25;

    private final Paths paths;
    private final ChordLight chords;
    private final Tally base = new Tally();
    private final Tally coarse = new Tally();
    private final Tally fine = new Tally();

    FaceCubature(Paths paths, ChordLight chords) {
        this.paths = paths;
        this.chords = chords;
    }

    /**
     * Adds the light of a face.
     *
     * @return the estimated error, or {@link Emitter#UNKNOWN}, with nothing added, if no two rules agreed
     */
    double add(Reflector face, View view, double accuracy, Tally into) {
        chords.look(view, false);
        double ofBase = begin(face, view, accuracy);
        coarse.set(base);
        face.points(FaceRule.ONE, chords, coarse);
        double difference = 0;
        for (FaceRule rule : FaceRule.RISING) {
            fine.set(base);
            face.points(rule, chords, fine);
            double last = difference;
            difference = view.difference(coarse, fine);
            double error = ofBase + (last > 0 ? difference * Math.min(1, CAUTION * difference / last) : difference);
            if (error <= accuracy * Math.abs(view.figure(fine))) {
                into.add(fine, 1);
                return error;
            }
            coarse.set(fine);
        }
        return Emitter.UNKNOWN;
    }

    /** What comes first, and its error. */
    private double begin(Reflector face, View view, double accuracy) {
        base.clear();
        double error = face.open(paths.place, view, OF_SERIES * accuracy, base);
        if (error < 0) {
            return 0;
        }
        Vec way = face.middle().minus(paths.place).unit();
        double passed = paths.ofPoint(face.middle(), way.x(), way.y(), way.z());
        base.scale(passed);
        chords.lookBeside(passed);
        return error * passed;
    }
}
