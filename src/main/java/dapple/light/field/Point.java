package dapple.light.field;

import dapple.light.geometry.Hull;
import dapple.light.geometry.Vec;
import dapple.light.source.Beam;

/** A point with a beam. */
final class Point implements Emitter, Emitter.Seen {
    private final Vec centre;
    private final Vec aim;
    private final Beam beam;
    private final Hull hull;

    Point(Vec centre, Vec aim, Beam beam) {
        this.centre = centre;
        this.aim = aim;
        this.beam = beam;
        this.hull = Hull.point(centre);
    }

    @Override
    public Hull hull() {
        return hull;
    }

    @Override
    public double open(Vec place, View view, double accuracy, Tally into) {
        Vec way = centre.minus(place);
        double far = way.length();
        double light = beam.towards(-way.dot(aim) / far) / (far * far);
        if (light > 0) {
            into.add(way, light / far);
            into.round += light;
        }
        return 0;
    }

    @Override
    public Seen from(Vec place) {
        return this;
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
        chords.addPoint(centre, aim, beam, 1, into);
    }
}
