package dapple.light.field;

import dapple.light.geometry.Hull;
import dapple.light.geometry.Vec;
import dapple.light.source.Beam;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A face of which every element has the beam; its intensity on the axis is 1 as a whole. */
final class Reflector implements Emitter {
    private final Plate plate;
    private final Beam beam;
    /** No more of a beam's edges are followed; the others count as smooth. */
    static final int MOST_EDGES = 8;

    private final List<Double> edgeTangents;
    private final double narrowness;
    private final @Nullable FacePower power;

    Reflector(Plate plate, Beam beam) {
        this.plate = plate;
        this.beam = beam;
        this.edgeTangents = beam.edgesDegrees().stream()
                .limit(MOST_EDGES)
                .map(degrees -> Math.tan(Math.toRadians(degrees)))
                .toList();
        this.narrowness = narrowness(beam);
        this.power = beam instanceof Beam.Power cosine ? new FacePower(plate, cosine.exponent()) : null;
    }

    /** About the inverse of the half-width of the light as an angle from the foot of the perpendicular. */
    private static double narrowness(Beam beam) {
        return beam instanceof Beam.Power cosine ? Math.sqrt((cosine.exponent() + 3) / 2) : 2;
    }

    @Override
    public Hull hull() {
        return plate.hull();
    }

    @Override
    public double open(Vec place, View view, double accuracy, Tally into) {
        if (!(plate.height(place) > 0)) {
            return 0;
        }
        return power == null ? UNKNOWN : power.ofFace(place, view, accuracy, into);
    }

    /** Whether the face has the same side of all the beam's edges towards a place. */
    boolean isWithinEdges(Vec place) {
        double height = plate.height(place);
        Vec way = place.minus(plate.centre);
        double out = Math.sqrt(Math.max(0, way.dot(way) - height * height));
        for (double tangent : edgeTangents) {
            if (Math.abs(height * tangent - out) <= plate.radius) {
                return false;
            }
        }
        return true;
    }

    Vec middle() {
        return plate.centre;
    }

    /** Whether some points may stand for the face: it has no edges of the beam in it, nor a peak that they could miss. */
    boolean isSmall(Vec place) {
        return plate.radius < plate.height(place) / narrowness && isWithinEdges(place);
    }

    /** The light of the face by a cubature rule. */
    void points(FaceRule rule, ChordLight chords, Tally into) {
        for (int index = 0; index < rule.weights.length; index++) {
            double across = plate.radius * rule.places[index][0];
            double along = plate.radius * rule.places[index][1];
            Vec element = plate.centre.plus(plate.across.times(across)).plus(plate.along.times(along));
            chords.addPoint(element, plate.aim, beam, rule.weights[index], into);
        }
    }

    /** The beam falls with the angle: nothing gives more than the element nearest to the foot of the perpendicular. */
    @Override
    public double most(Vec place) {
        double height = plate.height(place);
        if (!(height > 0)) {
            return 0;
        }
        return power == null ? Double.POSITIVE_INFINITY : power.most(place, height);
    }

    @Override
    public Seen from(Vec place) {
        return new Chords(place);
    }

    private final class Chords extends PlateChords {
        private final ChordBeam ofElements;

        Chords(Vec place) {
            super(plate, place);
            this.ofElements = new ChordBeam(beam, plate.aim, height, edgeTangents, narrowness, power);
        }

        @Override
        public double fallOff() {
            return height / narrowness;
        }

        @Override
        public void chord(double at, ChordLight chords, double accuracy, Tally into) {
            double strength = 1 / (Math.PI * plate.radius * Math.cos(at));
            chords.addBeam(plate.chord(at), ofElements, strength, accuracy, into);
        }
    }
}
