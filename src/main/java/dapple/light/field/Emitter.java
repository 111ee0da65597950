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

    /** The source as one place sees it. */
    Seen from(Vec place);

    /** The chords of a source that a place can see. */
    interface Seen {
        /** The range of the coordinate across the source; nothing is seen when high is not above low. */
        double low();

        double high();

        /** The light of the chord at a coordinate, per unit of the coordinate. */
        void chord(double at, ChordLight chords, double accuracy, Tally into);
    }

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

        /** The azimuth of a place around the axis is the same for all elements, and so is what the reflector gives. */
        @Override
        public Seen from(Vec place) {
            Vec out = outOf(line.along(), place.minus(centre));
            double distance = out.length();
            double towards = line.reflector()
                    .map(reflector -> distance > 0 ? reflector.towards(out.dot(aim) / distance) : 0)
                    .orElse(1.0);
            return new SeenTube(this, distance * towards);
        }
    }

    /** A thin tube from a place. */
    record SeenTube(Tube tube, double strength) implements Seen {
        @Override
        public double low() {
            return 0;
        }

        @Override
        public double high() {
            return 1;
        }

        @Override
        public void chord(double at, ChordLight chords, double accuracy, Tally into) {
            chords.addDiffuse(tube.centre(), tube.line().along(), tube.line().length(), strength, accuracy, into);
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

        @Override
        public Seen from(Vec place) {
            Vec out = outOf(cylinder.along(), place.minus(centre));
            double distance = out.length();
            double high = distance > cylinder.radius() ? Math.acos(cylinder.radius() / distance) : 0;
            Vec towards = distance > 0 ? out.times(1 / distance) : out;
            return new SeenRound(this, distance, towards, cylinder.along().cross(towards), high);
        }
    }

    /** A cylinder from a place at a distance from its axis. */
    record SeenRound(Round round, double distance, Vec towards, Vec aside, double high) implements Seen {
        @Override
        public double low() {
            return -high;
        }

        @Override
        public void chord(double at, ChordLight chords, double accuracy, Tally into) {
            Source.Cylinder cylinder = round.cylinder();
            double cos = Math.cos(at);
            double radius = cylinder.radius();
            double up = radius * cos;
            double over = radius * Math.sin(at);
            Vec middle = new Vec(
                    round.centre().x() + up * towards.x() + over * aside.x(),
                    round.centre().y() + up * towards.y() + over * aside.y(),
                    round.centre().z() + up * towards.z() + over * aside.z());
            double strength = radius * (distance * cos - radius);
            chords.addDiffuse(middle, cylinder.along(), cylinder.length(), strength, accuracy, into);
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
                    centre.minus(half).minus(side),
                    centre.minus(half).plus(side));
        }

        @Override
        public Seen from(Vec place) {
            double height = aim.dot(place.minus(centre));
            return new SeenPanel(this, across(), height, height > 0 ? rectangle.width() / 2 : 0);
        }
    }

    /** A rectangle from a place at a height over its plane. */
    record SeenPanel(Panel panel, Vec across, double height, double high) implements Seen {
        @Override
        public double low() {
            return -high;
        }

        @Override
        public void chord(double at, ChordLight chords, double accuracy, Tally into) {
            Source.Rectangle rectangle = panel.rectangle();
            Vec middle = panel.centre().plus(across.times(at));
            chords.addDiffuse(middle, rectangle.along(), rectangle.length(), height, accuracy, into);
        }
    }

    /** A disc: parallel chords, by the angle whose sine is their distance from the middle over the radius. */
    record Plate(Vec centre, Vec aim, double radius, Vec across, Vec along) implements Emitter {
        Plate(Vec centre, Vec aim, double radius) {
            this(centre, aim, radius, aim.anyPerpendicular(), aim.cross(aim.anyPerpendicular()));
        }

        @Override
        public Bounds bounds() {
            return Bounds.around(hull().toArray(new Vec[0]));
        }

        @Override
        public List<Vec> hull() {
            Vec side = across.times(radius);
            Vec other = along.times(radius);
            return List.of(
                    centre.plus(side).plus(other),
                    centre.plus(side).minus(other),
                    centre.minus(side).minus(other),
                    centre.minus(side).plus(other));
        }

        /** Height of a place over the plane of the disc, m. */
        double height(Vec place) {
            return aim.dot(place.minus(centre));
        }

        Vec middle(double at) {
            return centre.plus(across.times(radius * Math.sin(at)));
        }

        double length(double at) {
            return 2 * radius * Math.cos(at);
        }

        @Override
        public Seen from(Vec place) {
            return new SeenPlate(this, height(place));
        }
    }

    /** A disc from a place at a height over its plane. */
    record SeenPlate(Plate plate, double height) implements Seen {
        @Override
        public double low() {
            return -high();
        }

        @Override
        public double high() {
            return height > 0 ? Math.PI / 2 : 0;
        }

        @Override
        public void chord(double at, ChordLight chords, double accuracy, Tally into) {
            double strength = height * plate.radius() * Math.cos(at);
            chords.addDiffuse(plate.middle(at), plate.along(), plate.length(at), strength, accuracy, into);
        }
    }

    /** A face of which every element has the beam; its intensity on the axis is 1 as a whole. */
    record Reflector(Plate plate, Beam beam) implements Emitter {
        @Override
        public Bounds bounds() {
            return plate.bounds();
        }

        @Override
        public List<Vec> hull() {
            return plate.hull();
        }

        @Override
        public Seen from(Vec place) {
            return new SeenReflector(this, plate.height(place) > 0 ? Math.PI / 2 : 0);
        }

        /** The light of the face by a cubature rule. */
        void points(FaceRule rule, ChordLight chords, Tally into) {
            for (int index = 0; index < rule.weights.length; index++) {
                Vec place = plate.centre()
                        .plus(plate.across().times(plate.radius() * rule.places[index][0]))
                        .plus(plate.along().times(plate.radius() * rule.places[index][1]));
                chords.addPoint(place, plate.aim(), beam, rule.weights[index], into);
            }
        }
    }

    /** A face with a beam from a place. */
    record SeenReflector(Reflector face, double high) implements Seen {
        @Override
        public double low() {
            return -high;
        }

        @Override
        public void chord(double at, ChordLight chords, double accuracy, Tally into) {
            Plate plate = face.plate();
            double strength = Math.cos(at) / (Math.PI * plate.radius());
            chords.addBeam(plate, at, strength, face.beam(), accuracy, into);
        }
    }

    /** A point with a beam. */
    record Point(Vec centre, Vec aim, Beam beam) implements Emitter, Seen {
        @Override
        public Bounds bounds() {
            return Bounds.around(centre);
        }

        @Override
        public List<Vec> hull() {
            return List.of(centre);
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
        public void chord(double at, ChordLight chords, double accuracy, Tally into) {
            chords.addPoint(centre, aim, beam, 1, into);
        }
    }

    private static Vec outOf(Vec axis, Vec way) {
        double onAxis = way.dot(axis);
        return new Vec(way.x() - onAxis * axis.x(), way.y() - onAxis * axis.y(), way.z() - onAxis * axis.z());
    }
}
