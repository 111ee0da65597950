package dapple.light.field;

import dapple.light.geometry.Bounds;
import dapple.light.geometry.Vec;
import dapple.light.source.Beam;
import dapple.light.source.Lamp;
import dapple.light.source.Source;
import java.util.List;

/**
 * Where a lamp's light comes from, with an emission of 1: a family of straight chords by one coordinate across it, or
 * a point.
 */
sealed interface Emitter {
    /** A box around everything that emits. */
    Bounds bounds();

    /** Corners of a convex hull around everything that emits. */
    List<Vec> hull();

    /** The range of the coordinate across the source that a place can see; empty when high is not above low. */
    double low(Vec place);

    double high(Vec place);

    /** The light of the chord at a coordinate, per unit of the coordinate. */
    void chord(double at, ChordLight chords, double accuracy, Tally into);

    static Emitter of(Lamp lamp) {
        Source source = lamp.source();
        if (source instanceof Source.Line line) {
            return new Tube(lamp.centre(), line, lamp.aim());
        }
        if (source instanceof Source.Cylinder cylinder) {
            return new Round(lamp.centre(), cylinder);
        }
        if (source instanceof Source.Rectangle rectangle) {
            return new Panel(lamp.centre(), lamp.aim(), rectangle);
        }
        if (source instanceof Source.Disc disc) {
            return new Plate(lamp.centre(), lamp.aim(), disc.radius());
        }
        if (source instanceof Source.Face face) {
            return new Reflector(new Plate(lamp.centre(), lamp.aim(), face.radius()), face.beam());
        }
        return new Point(lamp.centre(), lamp.aim(), ((Source.Spot) source).beam());
    }

    /** A thin tube: one chord. */
    record Tube(Vec centre, Source.Line line, Vec aim) implements Emitter {
        private Vec end(double side) {
            return centre.plus(line.along().times(side * line.length() / 2));
        }

        @Override
        public Bounds bounds() {
            return Bounds.around(end(-1), end(1));
        }

        @Override
        public List<Vec> hull() {
            return List.of(end(-1), end(1));
        }

        @Override
        public double low(Vec place) {
            return 0;
        }

        @Override
        public double high(Vec place) {
            return 1;
        }

        /** The azimuth of a place around the axis is the same for all elements, and so is what the reflector gives. */
        @Override
        public void chord(double at, ChordLight chords, double accuracy, Tally into) {
            Vec way = chords.place().minus(centre);
            Vec out = way.minus(line.along().times(way.dot(line.along())));
            double distance = out.length();
            double towards = line.reflector()
                    .map(reflector -> distance > 0 ? reflector.towards(out.dot(aim) / distance) : 0)
                    .orElse(1.0);
            chords.addDiffuse(end(-1), end(1), distance * towards, accuracy, into);
        }
    }

    /** A cylinder: chords along its axis, by the angle around it from the direction of the place. */
    record Round(Vec centre, Source.Cylinder cylinder) implements Emitter {
        @Override
        public Bounds bounds() {
            return Bounds.around(hull().toArray(new Vec[0]));
        }

        @Override
        public List<Vec> hull() {
            Vec along = cylinder.along().times(cylinder.length() / 2);
            Vec side = cylinder.along().anyPerpendicular().times(cylinder.radius());
            Vec other = cylinder.along().cross(side);
            return List.of(
                    centre.plus(along).plus(side).plus(other),
                    centre.plus(along).plus(side).minus(other),
                    centre.plus(along).minus(side).plus(other),
                    centre.plus(along).minus(side).minus(other),
                    centre.minus(along).plus(side).plus(other),
                    centre.minus(along).plus(side).minus(other),
                    centre.minus(along).minus(side).plus(other),
                    centre.minus(along).minus(side).minus(other));
        }

        private Vec out(Vec place) {
            Vec way = place.minus(centre);
            return way.minus(cylinder.along().times(way.dot(cylinder.along())));
        }

        @Override
        public double low(Vec place) {
            return -high(place);
        }

        @Override
        public double high(Vec place) {
            double distance = out(place).length();
            return distance > cylinder.radius() ? Math.acos(cylinder.radius() / distance) : 0;
        }

        @Override
        public void chord(double at, ChordLight chords, double accuracy, Tally into) {
            Vec out = out(chords.place());
            double distance = out.length();
            Vec towards = out.times(1 / distance);
            Vec aside = cylinder.along().cross(towards);
            Vec normal = towards.times(Math.cos(at)).plus(aside.times(Math.sin(at)));
            Vec middle = centre.plus(normal.times(cylinder.radius()));
            Vec half = cylinder.along().times(cylinder.length() / 2);
            double height = distance * Math.cos(at) - cylinder.radius();
            chords.addDiffuse(middle.minus(half), middle.plus(half), cylinder.radius() * height, accuracy, into);
        }
    }

    /** A rectangle: chords along its length, by the distance across. */
    record Panel(Vec centre, Vec aim, Source.Rectangle rectangle) implements Emitter {
        private Vec across() {
            return aim.cross(rectangle.along()).unit();
        }

        @Override
        public Bounds bounds() {
            return Bounds.around(hull().toArray(new Vec[0]));
        }

        @Override
        public List<Vec> hull() {
            Vec half = rectangle.along().times(rectangle.length() / 2);
            Vec side = across().times(rectangle.width() / 2);
            return List.of(
                    centre.plus(half).plus(side),
                    centre.plus(half).minus(side),
                    centre.minus(half).plus(side),
                    centre.minus(half).minus(side));
        }

        @Override
        public double low(Vec place) {
            return -high(place);
        }

        @Override
        public double high(Vec place) {
            return aim.dot(place.minus(centre)) > 0 ? rectangle.width() / 2 : 0;
        }

        @Override
        public void chord(double at, ChordLight chords, double accuracy, Tally into) {
            Vec middle = centre.plus(across().times(at));
            Vec half = rectangle.along().times(rectangle.length() / 2);
            double height = aim.dot(chords.place().minus(centre));
            chords.addDiffuse(middle.minus(half), middle.plus(half), height, accuracy, into);
        }
    }

    /** A disc: parallel chords, by the angle whose sine is their distance from the middle over the radius. */
    record Plate(Vec centre, Vec aim, double radius) implements Emitter {
        Vec across() {
            return aim.anyPerpendicular();
        }

        @Override
        public Bounds bounds() {
            return Bounds.around(hull().toArray(new Vec[0]));
        }

        @Override
        public List<Vec> hull() {
            Vec side = across().times(radius);
            Vec other = aim.cross(side);
            return List.of(
                    centre.plus(side).plus(other),
                    centre.plus(side).minus(other),
                    centre.minus(side).plus(other),
                    centre.minus(side).minus(other));
        }

        @Override
        public double low(Vec place) {
            return -high(place);
        }

        @Override
        public double high(Vec place) {
            return aim.dot(place.minus(centre)) > 0 ? Math.PI / 2 : 0;
        }

        Vec start(double at) {
            return centre.plus(across().times(radius * Math.sin(at))).minus(half(at));
        }

        Vec end(double at) {
            return centre.plus(across().times(radius * Math.sin(at))).plus(half(at));
        }

        private Vec half(double at) {
            return aim.cross(across()).times(radius * Math.cos(at));
        }

        @Override
        public void chord(double at, ChordLight chords, double accuracy, Tally into) {
            double height = aim.dot(chords.place().minus(centre));
            chords.addDiffuse(start(at), end(at), height * radius * Math.cos(at), accuracy, into);
        }
    }

    /** A face of which every element has the beam; its intensity on the axis is 1 as a whole. */
    record Reflector(Plate plate, Beam beam, Vec across, Vec other) implements Emitter {
        Reflector(Plate plate, Beam beam) {
            this(plate, beam, plate.across(), plate.aim().cross(plate.across()));
        }

        @Override
        public Bounds bounds() {
            return plate.bounds();
        }

        @Override
        public List<Vec> hull() {
            return plate.hull();
        }

        @Override
        public double low(Vec place) {
            return plate.low(place);
        }

        @Override
        public double high(Vec place) {
            return plate.high(place);
        }

        @Override
        public void chord(double at, ChordLight chords, double accuracy, Tally into) {
            double perLength = Math.cos(at) / (Math.PI * plate.radius());
            chords.addBeam(plate.start(at), plate.end(at), perLength, beam, plate.aim(), accuracy, into);
        }

        /** The light of the face by a cubature rule. */
        void points(FaceRule rule, ChordLight chords, Tally into) {
            for (int index = 0; index < rule.weights.length; index++) {
                Vec place = plate.centre()
                        .plus(across.times(plate.radius() * rule.places[index][0]))
                        .plus(other.times(plate.radius() * rule.places[index][1]));
                chords.addPoint(place, plate.aim(), beam, rule.weights[index], into);
            }
        }
    }

    /** A point with a beam. */
    record Point(Vec centre, Vec aim, Beam beam) implements Emitter {
        @Override
        public Bounds bounds() {
            return Bounds.around(centre);
        }

        @Override
        public List<Vec> hull() {
            return List.of(centre);
        }

        @Override
        public double low(Vec place) {
            return 0;
        }

        @Override
        public double high(Vec place) {
            return 1;
        }

        @Override
        public void chord(double at, ChordLight chords, double accuracy, Tally into) {
            chords.addPoint(centre, aim, beam, 1, into);
        }
    }
}
