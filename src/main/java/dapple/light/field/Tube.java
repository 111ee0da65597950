package dapple.light.field;

import dapple.light.geometry.Hull;
import dapple.light.geometry.Vec;
import dapple.light.source.Source;

/** A thin tube: one chord. */
final class Tube implements Emitter {
    private final Vec centre;
    private final Vec aim;
    private final Source.Line line;
    private final Hull hull;

    Tube(Vec centre, Source.Line line, Vec aim) {
        this.centre = centre;
        this.line = line;
        this.aim = aim;
        Vec half = line.along().times(line.length() / 2);
        this.hull = Hull.segment(centre.minus(half), centre.plus(half));
    }

    @Override
    public Hull hull() {
        return hull;
    }

    @Override
    public double open(Vec place, View view, double accuracy, Tally into) {
        Perpendicular axis = new Perpendicular(centre, line.along(), place);
        if (axis.distance() > ChordLight.NO_DISTANCE) {
            ThinLine piece = new ThinLine();
            piece.between(axis.distance(), axis.along() - line.length() / 2, axis.along() + line.length() / 2);
            double strength = towards(axis) / axis.distance();
            into.addChord(axis, strength * piece.across, line.along(), strength * piece.lengthwise);
            into.round += strength * piece.round;
        }
        return 0;
    }

    /**
     * What the reflector leaves: the azimuth of a place around the axis is the same for all elements.
     */
    private double towards(Perpendicular axis) {
        return line.reflector()
                .map(reflector -> reflector.towards(-axis.towards(aim)))
                .orElse(1.0);
    }

    @Override
    public Seen from(Vec place) {
        Perpendicular axis = new Perpendicular(centre, line.along(), place);
        double strength = axis.distance() > ChordLight.NO_DISTANCE ? axis.distance() * towards(axis) : 0;
        return new Chords(strength);
    }

    private final class Chords implements Seen {
        private final double strength;

        Chords(double strength) {
            this.strength = strength;
        }

        @Override
        public double low() {
            return 0;
        }

        @Override
        public double high() {
            return 1;
        }

        @Override
        public double width() {
            return 0;
        }

        @Override
        public void chord(double at, ChordLight chords, double accuracy, Tally into) {
            chords.addDiffuse(new Chord(centre, line.along(), line.length()), strength, accuracy, into);
        }
    }
}
