package dapple.light.field;

import dapple.light.geometry.Hull;
import dapple.light.geometry.Vec;
import dapple.light.source.Source;
import java.util.List;

/**
 * A diffuse rectangle: chords along its length, by the distance across. Open, its vector irradiance is Lambert's sum
 * over the edges, ½ Σ β g/|g| with β the angle that an edge fills and g the normal of the plane through it and the
 * place [baum1989]; from all round it counts with the solid angle that it fills [vanoosterom1983].
 */
final class Panel implements Emitter {
    private final Vec centre;
    private final Vec aim;
    private final Vec across;
    private final Source.Rectangle rectangle;
    private final Hull hull;

    private Panel(Vec centre, Vec aim, Source.Rectangle rectangle) {
        this.centre = centre;
        this.aim = aim;
        this.rectangle = rectangle;
        this.across = aim.cross(rectangle.along()).unit();
        this.hull = Hull.plate(
                centre, rectangle.along().times(rectangle.length() / 2), across.times(rectangle.width() / 2));
    }

    static Panel of(Vec centre, Vec aim, Source.Rectangle rectangle) {
        return new Panel(centre, aim, rectangle);
    }

    @Override
    public Hull hull() {
        return hull;
    }

    private double height(Vec place) {
        return aim.dot(place.minus(centre));
    }

    /** The corners run so that the sum over the edges points from the place to the rectangle. */
    @Override
    public double open(Vec place, View view, double accuracy, Tally into) {
        if (!(height(place) > 0)) {
            return 0;
        }
        List<Vec> corners = hull.corners();
        Vec first = corners.get(0).minus(place);
        Vec from = first;
        for (int corner = 1; corner <= corners.size(); corner++) {
            Vec to = corner < corners.size() ? corners.get(corner).minus(place) : first;
            Vec normal = from.cross(to);
            double length = normal.length();
            if (length > 0) {
                into.add(normal, Arctangent.angle(length, from.dot(to)) / (2 * length));
            }
            from = to;
        }
        if (view.countsRound()) {
            into.round += solidAngle(place, 0, 1, 2) + solidAngle(place, 0, 2, 3);
        }
        return 0;
    }

    /** Of the triangle of three corners: tan(Ω/2) = |a · (b × c)| / (abc + (a · b)c + (b · c)a + (c · a)b). */
    private double solidAngle(Vec place, int one, int other, int third) {
        Vec a = hull.corners().get(one).minus(place);
        Vec b = hull.corners().get(other).minus(place);
        Vec c = hull.corners().get(third).minus(place);
        double toA = a.length();
        double toB = b.length();
        double toC = c.length();
        double below = toA * toB * toC + a.dot(b) * toC + b.dot(c) * toA + c.dot(a) * toB;
        return 2 * Arctangent.angle(Math.abs(a.dot(b.cross(c))), below);
    }

    @Override
    public Seen from(Vec place) {
        return new Chords(height(place), across.dot(place.minus(centre)));
    }

    private final class Chords implements Seen {
        private final double height;
        private final double nearest;

        Chords(double height, double nearest) {
            this.height = height;
            this.nearest = nearest;
        }

        @Override
        public double fallOff() {
            return height;
        }

        @Override
        public double beside(double metres) {
            return Math.max(low(), Math.min(high(), nearest + metres));
        }

        @Override
        public double low() {
            return -high();
        }

        @Override
        public double high() {
            return height > 0 ? rectangle.width() / 2 : 0;
        }

        @Override
        public double width() {
            return rectangle.width();
        }

        @Override
        public void chord(double at, ChordLight chords, double accuracy, Tally into) {
            Chord chord = new Chord(centre.plus(across.times(at)), rectangle.along(), rectangle.length());
            chords.addDiffuse(chord, height, accuracy, into);
        }
    }
}
