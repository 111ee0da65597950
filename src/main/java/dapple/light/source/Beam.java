package dapple.light.source;

import dapple.light.quantity.Check;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/** Intensity against the angle from the aim, 1 on the axis, 0 from 90°. */
public sealed interface Beam {
    /**
     * Relative intensity.
     *
     * @param cosine of the angle from the aim
     */
    double towards(double cosine);

    /** The angles at which the beam ends or turns sharply, the sharpest first, °. */
    default List<Double> edgesDegrees() {
        return List.of();
    }

    /**
     * cos^n θ.
     *
     * @param exponent n, 0 to 100,000
     */
    record Power(double exponent) implements Beam {
        public Power {
            Check.within("exponent", exponent, 0, 100_000, "");
        }

        /**
         * The beam whose intensity is half at half the beam angle: n = ln 0.5 / ln cos(B/2).
         *
         * @param degrees B, the full angle between the directions of half intensity, 0.5 to 179.9
         */
        public static Power ofBeamAngle(double degrees) {
            Check.within("beam angle", degrees, 0.5, 179.9, "°");
            return new Power(Math.log(0.5) / Math.log(Math.cos(Math.toRadians(degrees / 2))));
        }

        @Override
        public double towards(double cosine) {
            return cosine > 0 ? Math.pow(cosine, exponent) : 0;
        }
    }

    /** Relative intensities at ascending angles, linear between, 0 beyond the last and from 90°. */
    final class Table implements Beam {
        private final double[] thetaDegrees;
        private final double[] relative;

        /**
         * A beam as a table.
         *
         * @param thetaDegrees ascending from 0, at most 180
         * @param relative at least 0, 1 at the first
         * @throws IllegalArgumentException if the table is not like this
         */
        public Table(double[] thetaDegrees, double[] relative) {
            if (thetaDegrees.length != relative.length || thetaDegrees.length < 2) {
                throw new IllegalArgumentException("a beam table must have two angles or more, each with an intensity");
            }
            if (!(thetaDegrees[0] == 0 && relative[0] == 1)) {
                throw new IllegalArgumentException("a beam table must begin with 1 at 0°");
            }
            for (int row = 0; row < thetaDegrees.length; row++) {
                Check.within("relative intensity", relative[row], 0, 1e6, "");
                if (row > 0 && !(thetaDegrees[row] > thetaDegrees[row - 1] && thetaDegrees[row] <= 180)) {
                    throw new IllegalArgumentException("the angles of a beam table must ascend to at most 180°");
                }
            }
            this.thetaDegrees = thetaDegrees.clone();
            this.relative = relative.clone();
        }

        /** A turn is sharp if one more degree in the old direction would be off by so much. */
        private static final double SHARP = 0.01;

        @Override
        public List<Double> edgesDegrees() {
            List<Integer> rows = new ArrayList<>();
            for (int row = 1; row < relative.length; row++) {
                if (thetaDegrees[row] < 90 && turn(row) > SHARP) {
                    rows.add(row);
                }
            }
            rows.sort(Comparator.comparingDouble(this::turn).reversed());
            return rows.stream().map(row -> thetaDegrees[row]).toList();
        }

        /** Change of slope at a row, per degree; at the last all that is left falls off. */
        private double turn(int row) {
            if (row == relative.length - 1) {
                return relative[row] + Math.abs(slope(row));
            }
            return Math.abs(slope(row + 1) - slope(row));
        }

        /** Slope of the line that ends at a row, per degree. */
        private double slope(int row) {
            return (relative[row] - relative[row - 1]) / (thetaDegrees[row] - thetaDegrees[row - 1]);
        }

        @Override
        public double towards(double cosine) {
            if (!(cosine > 0)) {
                return 0;
            }
            double theta = Math.toDegrees(Math.acos(Math.min(1, cosine)));
            int found = Arrays.binarySearch(thetaDegrees, theta);
            if (found >= 0) {
                return relative[found];
            }
            int above = -found - 1;
            return above == thetaDegrees.length ? 0 : between(above, theta);
        }

        private double between(int above, double theta) {
            double share = (theta - thetaDegrees[above - 1]) / (thetaDegrees[above] - thetaDegrees[above - 1]);
            return relative[above - 1] + share * (relative[above] - relative[above - 1]);
        }
    }
}
