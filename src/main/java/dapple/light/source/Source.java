package dapple.light.source;

import dapple.light.geometry.Vec;
import dapple.light.quantity.Check;
import java.util.Optional;

/** The shape that a lamp emits from. The middle and the aim belong to the lamp. Lengths in metres. */
public sealed interface Source {
    /** Longest side that is taken for a lamp: 100 m. */
    double MOST = 100;

    /** Shortest side that is taken for a lamp: 1 µm. */
    double LEAST = 1e-6;

    /**
     * A thin diffuse tube: every element has intensity ∝ sin γ, γ from the axis; with a reflector also ∝ T(φ), φ around
     * the axis from the aim.
     *
     * @param along direction of the axis
     */
    record Line(double length, Vec along, Optional<Reflector> reflector) implements Source {
        public Line {
            Check.within("length", length, LEAST, MOST, "m");
            along = along.unit();
        }
    }

    /**
     * T(φ) = spill + (1 − spill) · max(0, cos φ)^lobe.
     *
     * @param lobe 0 to 1000
     * @param spill 0 to 1
     */
    record Reflector(double lobe, double spill) {
        public Reflector {
            Check.within("lobe", lobe, 0, 1000, "");
            Check.within("spill", spill, 0, 1, "");
        }

        /** T for a cosine of φ. */
        public double towards(double cosine) {
            return spill + (1 - spill) * (cosine > 0 ? Math.pow(cosine, lobe) : 0);
        }
    }

    /** A tube with a radius: the lateral surface, Lambertian, all round; end caps neither emit nor shade. */
    record Cylinder(double length, Vec along, double radius) implements Source {
        public Cylinder {
            Check.within("length", length, LEAST, MOST, "m");
            Check.within("radius", radius, LEAST, MOST, "m");
            along = along.unit();
        }
    }

    /** A round face towards the aim, Lambertian. */
    record Disc(double radius) implements Source {
        public Disc {
            Check.within("radius", radius, LEAST, MOST, "m");
        }
    }

    /**
     * A rectangular face towards the aim, Lambertian.
     *
     * @param along direction of the length
     */
    record Rectangle(double length, Vec along, double width) implements Source {
        public Rectangle {
            Check.within("length", length, LEAST, MOST, "m");
            Check.within("width", width, LEAST, MOST, "m");
            along = along.unit();
        }
    }

    /** A point with a beam. */
    record Spot(Beam beam) implements Source {}

    /** A round face of which every element has the beam. */
    record Face(Beam beam, double radius) implements Source {
        public Face {
            Check.within("radius", radius, LEAST, MOST, "m");
        }
    }
}
