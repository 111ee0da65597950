package dapple.light.field;

import dapple.light.cover.Filter;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Quantity;
import java.util.Map;
import java.util.Optional;

/** A filter by formulas of its own, and the same as the engine knows it. */
interface Cover {
    Plate plate();

    /** Share that passes, for a direction in the plate's axes, the last along its normal. */
    double share(Quantity quantity, Vec direction);

    Filter filter();

    Cover moved(Motion motion);

    /** Where it lies; a part of a plane only where it is horizontal, by two corners in x and y. */
    record Plate(Vec point, Vec normal, Vec along, Optional<double[]> corners) {
        /** Whether a path crosses it, by the place at which the path meets the plane. */
        boolean isCrossed(Vec from, Vec to) {
            double start = from.minus(point).dot(normal);
            double end = to.minus(point).dot(normal);
            if (!(start * end < 0)) {
                return false;
            }
            Vec at = from.plus(to.minus(from).times(start / (start - end)));
            return corners.map(part -> at.x() > part[0] && at.y() > part[1] && at.x() < part[2] && at.y() < part[3])
                    .orElse(true);
        }

        Vec local(Vec direction) {
            return new Vec(direction.dot(along), direction.dot(normal.cross(along)), direction.dot(normal));
        }

        Filter.Plane plane() {
            return new Filter.Plane(
                    point,
                    normal,
                    along,
                    corners.map(part -> Filter.Rectangle.between(part[0], part[1], part[2], part[3])));
        }

        Plate moved(Motion motion) {
            return new Plate(motion.of(point), motion.of(normal), motion.of(along), corners);
        }
    }

    /** Round wires: the shadows of each set by the angle at which it is seen across the wires. */
    record Weave(Plate plate, double wire, double pitch, int layers) implements Cover {
        @Override
        public double share(Quantity quantity, Vec direction) {
            double one = open(direction.x(), direction.z());
            double other = open(direction.y(), direction.z());
            double share = 1;
            for (int layer = 0; layer < layers; layer++) {
                share *= one * other;
            }
            return share;
        }

        private double open(double across, double through) {
            double seenAt = Math.atan2(Math.abs(across), Math.abs(through));
            return Math.max(0, 1 - wire / (pitch * Math.cos(seenAt)));
        }

        @Override
        public Filter filter() {
            return new Filter.Mesh(plate.plane(), wire, pitch, layers);
        }

        @Override
        public Cover moved(Motion motion) {
            return new Weave(plate.moved(motion), wire, pitch, layers);
        }
    }

    /** Measured, alike at every angle. */
    record Film(Plate plate, Map<Quantity, Double> shares, int layers) implements Cover {
        @Override
        public double share(Quantity quantity, Vec direction) {
            double share = 1;
            for (int layer = 0; layer < layers; layer++) {
                share *= shares.getOrDefault(quantity, Double.NaN);
            }
            return share;
        }

        @Override
        public Filter filter() {
            return new Filter.Measured(plate.plane(), shares, layers);
        }

        @Override
        public Cover moved(Motion motion) {
            return new Film(plate.moved(motion), shares, layers);
        }
    }

    /** Glazing: Fresnel by the two angles, and the rays that go to and fro summed one by one. */
    record Glazing(Plate plate, double index, double thickness, Map<Quantity, Double> absorption) implements Cover {
        @Override
        public double share(Quantity quantity, Vec direction) {
            double outside = Math.atan2(Math.hypot(direction.x(), direction.y()), Math.abs(direction.z()));
            double inside = Math.asin(Math.sin(outside) / index);
            double once = Math.exp(-absorption.getOrDefault(quantity, Double.NaN) * thickness / Math.cos(inside));
            double across =
                    outside == 0 ? (index - 1) / (index + 1) : Math.sin(outside - inside) / Math.sin(outside + inside);
            double along =
                    outside == 0 ? (index - 1) / (index + 1) : Math.tan(outside - inside) / Math.tan(outside + inside);
            return (summed(across * across, once) + summed(along * along, once)) / 2;
        }

        private static double summed(double reflected, double once) {
            double ray = (1 - reflected) * once * (1 - reflected);
            double sum = 0;
            while (ray > 1e-15 * sum) {
                sum += ray;
                ray *= reflected * once * reflected * once;
            }
            return sum;
        }

        @Override
        public Filter filter() {
            return new Filter.Pane(plate.plane(), index, thickness, absorption);
        }

        @Override
        public Cover moved(Motion motion) {
            return new Glazing(plate.moved(motion), index, thickness, absorption);
        }
    }
}
