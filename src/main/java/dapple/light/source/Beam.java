package dapple.light.source;

import dapple.light.quantity.Check;
import java.util.Arrays;

/** Intensity against the angle from the aim, 1 on the axis, 0 from 90°. */
public sealed interface Beam {
    /**
     * Relative intensity.
     *
     * @param cosine of the angle from the aim
     */
    double towards(double cosine);

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

    /**
     * Relative intensities at ascending angles, linear between, 0 beyond the last and from 90°.
     *
     * @param thetaDegrees ascending from 0
     * @param relative at least 0, 1 at the first
     */
    record Table(double[] thetaDegrees, double[] relative) implements Beam {
        public Table {
            thetaDegrees = thetaDegrees.clone();
            relative = relative.clone();
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
            if (above == thetaDegrees.length) {
                return 0;
            }
            double share = (theta - thetaDegrees[above - 1]) / (thetaDegrees[above] - thetaDegrees[above - 1]);
            return relative[above - 1] + share * (relative[above] - relative[above - 1]);
        }

        @Override
        public double[] thetaDegrees() {
            return thetaDegrees.clone();
        }

        @Override
        public double[] relative() {
            return relative.clone();
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof Table table
                    && Arrays.equals(thetaDegrees, table.thetaDegrees)
                    && Arrays.equals(relative, table.relative);
        }

        @Override
        public int hashCode() {
            return 31 * Arrays.hashCode(thetaDegrees) + Arrays.hashCode(relative);
        }

        @Override
        public String toString() {
            return "Table" + Arrays.toString(thetaDegrees) + Arrays.toString(relative);
        }
    }
}
