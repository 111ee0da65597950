package dapple.light.field;

import dapple.light.geometry.Hull;
import dapple.light.geometry.Vec;
import dapple.light.source.Lamp;
import dapple.light.source.Source;

/**
 * Where a lamp's light comes from, with an emission of 1: a family of straight chords by one coordinate across it, or
 * a point. Not changed by being asked, so that threads may share it.
 */
sealed interface Emitter permits Tube, Round, Panel, Plate, Reflector, Point {
    /** What {@link #open} gives where the chords are needed. */
    double UNKNOWN = -1;

    /** A convex hull around everything that emits. */
    Hull hull();

    /**
     * Adds the light of the whole source, with nothing between, by a closed form or a quick rule.
     *
     * @param accuracy largest relative error of the view's figure that is accepted
     * @return the estimated error of the view's figure, or {@link #UNKNOWN}, with nothing added
     */
    double open(Vec place, View view, double accuracy, Tally into);

    /** More than what arrives in any view, with nothing between; infinite where that is not told at once. */
    default double most(Vec place) {
        return Double.POSITIVE_INFINITY;
    }

    /** The chords that a place can see. */
    Seen from(Vec place);

    /** The chords of a source that a place can see. */
    interface Seen extends Slices.Weight {
        /** The range of the coordinate across the source; nothing is seen when high is not above low. */
        double low();

        double high();

        /** The width of the source across its chords, m. */
        double width();

        /** How far from the nearest chord light falls off notably, m; infinite where it does not. */
        default double fallOff() {
            return Double.POSITIVE_INFINITY;
        }

        /** The coordinate of a chord by its distance across from the one nearest to the place, m; held within the range. */
        default double beside(double metres) {
            return 0;
        }

        /** Adds the light of the chord at a coordinate, per unit of the weight. */
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
            return Panel.of(lamp.centre(), lamp.aim(), rectangle);
        }
        if (source instanceof Source.Disc disc) {
            return Plate.of(lamp.centre(), lamp.aim(), disc.radius());
        }
        if (source instanceof Source.Face face) {
            return new Reflector(Plate.of(lamp.centre(), lamp.aim(), face.radius()), face.beam());
        }
        return new Point(lamp.centre(), lamp.aim(), ((Source.Spot) source).beam());
    }
}
