package dapple.lamp;

import dapple.light.quantity.Check;
import java.util.List;
import java.util.Optional;

/** What emits in a lamp, as the light engine's sources know it; where it hangs and aims is said by its fitting. */
public sealed interface LampShape {
    double LEAST_METRES = 0.001;
    double MOST_METRES = 10;

    /**
     * A thin tube.
     *
     * @param lobe exponent of its reflector, 0 to 1000; none: a bare tube
     * @param spill share that the reflector lets through to the back, 0 to 1; 0 for a bare tube
     */
    record Line(double lengthMetres, Optional<Double> lobe, double spill) implements LampShape {
        public Line {
            length(lengthMetres);
            lobe.ifPresent(exponent -> Check.within("lobe", exponent, 0, 1000, ""));
            Check.within("spill", spill, 0, lobe.isPresent() ? 1 : 0, "");
        }
    }

    /** A tube thick enough to count, all round. */
    record Cylinder(double lengthMetres, double radiusMetres) implements LampShape {
        public Cylinder {
            length(lengthMetres);
            radius(radiusMetres);
        }
    }

    /**
     * A beam.
     *
     * @param beamAngleDegrees full angle between the directions of half intensity, 0.5 to 179.9
     * @param radiusMetres of the face that emits; none: a point
     */
    record Spot(double beamAngleDegrees, Optional<Double> radiusMetres) implements LampShape {
        public Spot {
            Check.within("beam angle", beamAngleDegrees, 0.5, 179.9, "°");
            radiusMetres.ifPresent(LampShape::radius);
        }
    }

    /**
     * A beam as a photometric file has it.
     *
     * @param relative intensity over that along the aim, at each degree from 0 to 90; the mean around the aim
     * @param radiusMetres of the face that emits; none: a point
     */
    record Measured(List<Double> relative, Optional<Double> radiusMetres) implements LampShape {
        /** The last angle from the aim; nothing goes beyond it. */
        public static final int DEGREES = 90;

        public Measured {
            relative = List.copyOf(relative);
            if (relative.size() != DEGREES + 1 || relative.get(0) != 1) {
                throw new IllegalArgumentException("a measured beam must have 91 intensities and begin with 1");
            }
            relative.forEach(share -> Check.within("relative intensity", share, 0, 1e6, ""));
            radiusMetres.ifPresent(LampShape::radius);
        }
    }

    /** A round face that emits as a matt one does. */
    record Disc(double radiusMetres) implements LampShape {
        public Disc {
            radius(radiusMetres);
        }
    }

    /** A rectangular face that emits as a matt one does. */
    record Panel(double lengthMetres, double widthMetres) implements LampShape {
        public Panel {
            length(lengthMetres);
            Check.within("width", widthMetres, LEAST_METRES, MOST_METRES, "m");
        }
    }

    private static void length(double metres) {
        Check.within("length", metres, LEAST_METRES, MOST_METRES, "m");
    }

    private static void radius(double metres) {
        Check.within("radius", metres, LEAST_METRES, MOST_METRES, "m");
    }
}
