package dapple.light.field;

import dapple.light.geometry.Hull;
import dapple.light.geometry.Vec;
import dapple.light.source.Source;

/**
 * A cylinder that glows all round: chords along its axis. A place at distance h from the axis sees the chord at the
 * azimuth χ from the axis, sin χ = (a/h) sin τ with −90° ≤ τ ≤ 90°, at the distance h cos χ − a cos τ; for a surface of
 * radiance 1 a step of the azimuth is a thin line of strength dχ, since only the outline of a diffuse surface matters.
 */
final class Round implements Emitter {
    /** The places τ and the weights of the rule with three places for the weight cos τ, by its moments up to τ⁵. */
    private static final double OUTER_SQUARE = outerSquare();

    private static final double OUTER_SIN = Math.sin(Math.sqrt(OUTER_SQUARE));
    private static final double OUTER_COS = Math.cos(Math.sqrt(OUTER_SQUARE));
    private static final double OUTER_WEIGHT = secondMoment() / (2 * OUTER_SQUARE);
    private static final double INNER_WEIGHT = 2 - 2 * OUTER_WEIGHT;

    /** Nearer than this many radii the three chords are not tried. */
    private static final double NEAREST = 3;

    /**
     * The error of three chords over their difference from one: at most 0.06 for light that varies with sin τ and cos τ
     * up to the third power, as it does in order of a/h; 0.2 is claimed.
     */
    private static final double CLAIMED = 0.2;

    private final Vec centre;
    private final Source.Cylinder cylinder;
    private final Hull hull;

    Round(Vec centre, Source.Cylinder cylinder) {
        this.centre = centre;
        this.cylinder = cylinder;
        Vec along = cylinder.along();
        Vec side = along.anyPerpendicular();
        this.hull = Hull.block(
                centre,
                along.times(cylinder.length() / 2),
                side.times(cylinder.radius()),
                along.cross(side).times(cylinder.radius()));
    }

    /** ∫ τ² cos τ dτ. */
    private static double secondMoment() {
        return Math.PI * Math.PI / 2 - 4;
    }

    /** ∫ τ⁴ cos τ dτ / ∫ τ² cos τ dτ. */
    private static double outerSquare() {
        double half = Math.PI / 2;
        return 2 * (Math.pow(half, 4) - 12 * half * half + 24) / secondMoment();
    }

    @Override
    public Hull hull() {
        return hull;
    }

    /** The two outer chords of the three lie alike on both sides of the axis. */
    @Override
    public double open(Vec place, View view, double accuracy, Tally into) {
        Perpendicular axis = new Perpendicular(centre, cylinder.along(), place);
        double radius = cylinder.radius();
        double distance = axis.distance();
        if (distance < NEAREST * radius) {
            return distance > radius ? UNKNOWN : 0;
        }
        double low = axis.along() - cylinder.length() / 2;
        double high = axis.along() + cylinder.length() / 2;
        double small = radius / distance;
        double sin = small * OUTER_SIN;
        double cos = Math.sqrt(1 - sin * sin);
        ThinLine middle = new ThinLine();
        middle.between(distance - radius, low, high);
        ThinLine outer = new ThinLine();
        outer.between(distance * cos - radius * OUTER_COS, low, high);
        double across = small * (INNER_WEIGHT * middle.across + 2 * OUTER_WEIGHT * outer.across);
        double lengthwise = small * (INNER_WEIGHT * middle.lengthwise + 2 * OUTER_WEIGHT / cos * outer.lengthwise);
        double round = small * (INNER_WEIGHT * middle.round + 2 * OUTER_WEIGHT / cos * outer.round);
        double error = CLAIMED
                * view.size(
                        axis,
                        across - 2 * small * middle.across,
                        cylinder.along(),
                        lengthwise - 2 * small * middle.lengthwise,
                        round - 2 * small * middle.round);
        if (!(error <= accuracy * view.size(axis, across, cylinder.along(), lengthwise, round))) {
            return UNKNOWN;
        }
        into.addChord(axis, across, cylinder.along(), lengthwise);
        into.round += round;
        return error;
    }

    @Override
    public Seen from(Vec place) {
        return new Chords(new Perpendicular(centre, cylinder.along(), place));
    }

    /** The chords by τ. */
    private final class Chords implements Seen {
        private final Perpendicular axis;
        private final Vec towards;
        private final Vec aside;

        Chords(Perpendicular axis) {
            this.axis = axis;
            this.towards = new Vec(axis.x(), axis.y(), axis.z());
            this.aside = cylinder.along().cross(towards);
        }

        @Override
        public double fallOff() {
            return axis.distance() - cylinder.radius();
        }

        @Override
        public double low() {
            return -high();
        }

        @Override
        public double high() {
            return axis.distance() > cylinder.radius() ? Math.PI / 2 : 0;
        }

        @Override
        public double width() {
            return 2 * cylinder.radius();
        }

        @Override
        public double weight(double at) {
            return Math.cos(at);
        }

        @Override
        public double weight(double from, double to) {
            return Math.sin(to) - Math.sin(from);
        }

        @Override
        public void chord(double at, ChordLight chords, double accuracy, Tally into) {
            double radius = cylinder.radius();
            double small = radius / axis.distance();
            double sinAt = Math.sin(at);
            double cosAt = Math.sqrt(1 - sinAt * sinAt);
            double sin = small * sinAt;
            double cos = Math.sqrt(1 - sin * sin);
            double away = axis.distance() * cos - radius * cosAt;
            Vec middle =
                    centre.plus(towards.times(away * cos - axis.distance())).plus(aside.times(away * sin));
            double strength = away * away * small / cos;
            chords.addDiffuse(new Chord(middle, cylinder.along(), cylinder.length()), strength, accuracy, into);
        }
    }
}
