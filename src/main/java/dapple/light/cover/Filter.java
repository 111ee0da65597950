package dapple.light.cover;

import dapple.light.geometry.Vec;
import dapple.light.quantity.Check;
import dapple.light.quantity.Quantity;
import java.util.Map;
import java.util.Optional;

/** What every straight path through a plane, or through a rectangle of it, loses. */
public sealed interface Filter {
    Plane plane();

    /** Whether all directions pass alike, so that a transmittance is a number. */
    boolean isAlikeAtEveryAngle();

    /**
     * Share that passes.
     *
     * @param direction of the path, of length 1
     */
    default double transmittance(Quantity quantity, Vec direction) {
        return transmittance(quantity, direction.x(), direction.y(), direction.z());
    }

    /** Share that passes, for a direction by its components. */
    double transmittance(Quantity quantity, double x, double y, double z);

    /** Whether the filter says how much of a quantity passes. */
    boolean names(Quantity quantity);

    /**
     * Square weave of round wires: max(0, 1 − (d/p)·√(1 + (u/w)²)) · max(0, 1 − (d/p)·√(1 + (v/w)²)) a layer, for a
     * direction (u, v, w) in the plane's axes, w along its normal; layers that are not registered multiply.
     *
     * @param wire diameter d, m
     * @param pitch distance p of the wires' centres, m, above d
     * @param layers 1 to 100
     */
    record Mesh(Plane plane, double wire, double pitch, int layers) implements Filter {
        public Mesh {
            Check.within("pitch", pitch, 1e-6, 1, "m");
            Check.within("wire", wire, 0, Math.nextDown(pitch), "m");
            Check.within("layers", layers, 1, 100, "");
        }

        @Override
        public boolean isAlikeAtEveryAngle() {
            return false;
        }

        @Override
        public double transmittance(Quantity quantity, double x, double y, double z) {
            Vec normal = plane.normal();
            Vec along = plane.along();
            double inverse = 1 / (x * normal.x() + y * normal.y() + z * normal.z());
            double u = (x * along.x() + y * along.y() + z * along.z()) * inverse;
            double share = wire / pitch;
            double oneSet = 1 - share * Math.sqrt(1 + u * u);
            double otherSet = 1 - share * Math.sqrt(Math.max(1, inverse * inverse - u * u));
            double layer = oneSet > 0 && otherSet > 0 ? oneSet * otherSet : 0;
            return layers == 1 ? layer : Math.pow(layer, layers);
        }

        @Override
        public boolean names(Quantity quantity) {
            return true;
        }
    }

    /**
     * Measured transmittances, the same at every angle: a sheet, or a mesh of unknown weave.
     *
     * @param layers 1 to 100, each with these transmittances
     */
    record Measured(Plane plane, Map<Quantity, Double> transmittances, int layers) implements Filter {
        public Measured {
            transmittances = Map.copyOf(transmittances);
            transmittances.values().forEach(share -> Check.within("transmittance", share, 0, 1, ""));
            Check.within("layers", layers, 1, 100, "");
        }

        @Override
        public boolean isAlikeAtEveryAngle() {
            return true;
        }

        @Override
        public double transmittance(Quantity quantity, double x, double y, double z) {
            return Math.pow(transmittances.getOrDefault(quantity, 0.0), layers);
        }

        @Override
        public boolean names(Quantity quantity) {
            return transmittances.containsKey(quantity);
        }
    }

    /**
     * Clear glazing: Fresnel's reflection at both faces for unpolarised light, absorption on the way between them, and
     * what goes to and fro: T = (1 − r)² A / (1 − r² A²), A = exp(−K t / cos θ′), the mean of both polarisations
     * [duffie2013].
     *
     * @param index of refraction, 1 to 4
     * @param thickness t, m
     * @param absorptionPerMetre K of each quantity, 1/m
     */
    record Pane(Plane plane, double index, double thickness, Map<Quantity, Double> absorptionPerMetre)
            implements Filter {
        public Pane {
            Check.within("index", index, 1, 4, "");
            Check.within("thickness", thickness, 1e-6, 1, "m");
            absorptionPerMetre = Map.copyOf(absorptionPerMetre);
            absorptionPerMetre.values().forEach(k -> Check.within("absorption", k, 0, 1e9, "1/m"));
        }

        @Override
        public boolean isAlikeAtEveryAngle() {
            return false;
        }

        @Override
        public double transmittance(Quantity quantity, double x, double y, double z) {
            Vec normal = plane.normal();
            double outside = Math.min(1, Math.abs(x * normal.x() + y * normal.y() + z * normal.z()));
            double sine = Math.sqrt(1 - outside * outside) / index;
            double inside = Math.sqrt(1 - sine * sine);
            double absorbed = Math.exp(-absorptionPerMetre.getOrDefault(quantity, 0.0) * thickness / inside);
            double across = (outside - index * inside) / (outside + index * inside);
            double along = (index * outside - inside) / (index * outside + inside);
            return (passed(across * across, absorbed) + passed(along * along, absorbed)) / 2;
        }

        private static double passed(double reflected, double absorbed) {
            double entered = 1 - reflected;
            return entered * entered * absorbed / (1 - reflected * reflected * absorbed * absorbed);
        }

        @Override
        public boolean names(Quantity quantity) {
            return absorptionPerMetre.containsKey(quantity);
        }
    }

    /**
     * The plane that a filter lies in, with the directions of its axes.
     *
     * @param normal of length 1
     * @param along of length 1, in the plane
     * @param over the rectangle that it is limited to; a horizontal plane only
     */
    record Plane(Vec point, Vec normal, Vec along, Optional<Rectangle> over) {
        private static final double LEVEL = 1e-9;

        public Plane {
            normal = normal.unit();
            Vec inPlane = along.minus(normal.times(along.dot(normal)));
            along = inPlane.unit();
            if (over.isPresent() && Math.hypot(normal.x(), normal.y()) > LEVEL) {
                throw new IllegalArgumentException("over is for a horizontal plane");
            }
        }

        /** A plane whose axes are x and y where it is horizontal, else chosen. */
        public static Plane of(Vec point, Vec normal, Optional<Rectangle> over) {
            boolean level = Math.hypot(normal.unit().x(), normal.unit().y()) <= LEVEL;
            return new Plane(
                    point, normal, level ? new Vec(1, 0, 0) : normal.unit().anyPerpendicular(), over);
        }

        public Vec across() {
            return normal.cross(along);
        }

        /** Distance of a place on the side of the normal, m. */
        public double height(Vec place) {
            return place.minus(point).dot(normal);
        }
    }

    /** A rectangle by two opposite corners in x and y, m. */
    record Rectangle(double lowX, double lowY, double highX, double highY) {
        public static Rectangle between(double oneX, double oneY, double otherX, double otherY) {
            return new Rectangle(
                    Math.min(oneX, otherX), Math.min(oneY, otherY), Math.max(oneX, otherX), Math.max(oneY, otherY));
        }

        public Rectangle {
            if (!(highX > lowX && highY > lowY)) {
                throw new IllegalArgumentException("a rectangle must have a size");
            }
        }
    }
}
