package dapple.light.field;

import dapple.light.geometry.Hull;
import dapple.light.geometry.Vec;

/** A diffuse disc: parallel chords, by the angle whose sine is their distance from the middle over the radius. */
final class Plate implements Emitter {
    final Vec centre;
    final Vec aim;
    final double radius;
    final Vec across;
    final Vec along;
    private final Hull hull;

    private Plate(Vec centre, Vec aim, double radius) {
        this.centre = centre;
        this.aim = aim;
        this.radius = radius;
        this.across = aim.anyPerpendicular();
        this.along = aim.cross(across);
        this.hull = Hull.plate(centre, across.times(radius), along.times(radius));
    }

    static Plate of(Vec centre, Vec aim, double radius) {
        return new Plate(centre, aim, radius);
    }

    @Override
    public Hull hull() {
        return hull;
    }

    /** Height of a place over the plane of the disc, m. */
    double height(Vec place) {
        return aim.x() * (place.x() - centre.x())
                + aim.y() * (place.y() - centre.y())
                + aim.z() * (place.z() - centre.z());
    }

    Chord chord(double at) {
        return new Chord(centre.plus(across.times(radius * Math.sin(at))), along, 2 * radius * Math.cos(at));
    }

    /**
     * The handbooks' factors for a place at height h and p from the axis, with s = h² + p² and
     * v² = (s + R²)² − 4R²p²: along the axis (π/2)(1 − (s − R²)/v), across it (π h/2p)((s + R²)/v − 1), here without the
     * differences of what is nearly alike [howell2016]. From all round there is no short form.
     */
    @Override
    public double open(Vec place, View view, double accuracy, Tally into) {
        double height = height(place);
        if (!(height > 0)) {
            return 0;
        }
        if (view.countsRound()) {
            return UNKNOWN;
        }
        Vec way = place.minus(centre);
        double square = way.dot(way);
        double ownSquare = radius * radius;
        double fromAxis = Math.max(0, square - height * height);
        double sum = square + ownSquare;
        double root = Math.sqrt(sum * sum - 4 * ownSquare * fromAxis);
        double difference = square - ownSquare;
        double onAxis = difference > 0
                ? 2 * Math.PI * ownSquare * height * height / (root * (root + difference))
                : Math.PI / 2 * (1 - difference / root);
        double outwards = 2 * Math.PI * ownSquare * height / (root * (sum + root));
        into.add(way, -outwards);
        into.add(aim, outwards * height - onAxis);
        return 0;
    }

    @Override
    public Seen from(Vec place) {
        return new Chords(place);
    }

    private final class Chords extends PlateChords {
        Chords(Vec place) {
            super(Plate.this, place);
        }

        @Override
        public void chord(double at, ChordLight chords, double accuracy, Tally into) {
            chords.addDiffuse(Plate.this.chord(at), height * radius / Math.cos(at), accuracy, into);
        }
    }
}
