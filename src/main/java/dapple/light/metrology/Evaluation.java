package dapple.light.metrology;

import dapple.light.quantity.Check;

/** How the standard uncertainty u of an input is known, in the input's unit or as a share of it [jcgm100, 4.2 and 4.3]. */
public sealed interface Evaluation {
    /** Degrees of freedom of what is taken as known exactly. */
    double MANY = Double.POSITIVE_INFINITY;

    /** u, at least 0. */
    double standard();

    /** ν of u, above 0; infinite where u itself is taken as sure. */
    default double degreesOfFreedom() {
        return MANY;
    }

    /**
     * u as it is.
     *
     * @param standard u, at least 0
     * @param degreesOfFreedom ν, above 0, may be infinite
     */
    record Standard(double standard, double degreesOfFreedom) implements Evaluation {
        public Standard {
            Check.notNegative("standard uncertainty", standard, "");
            if (!(degreesOfFreedom > 0)) {
                throw new IllegalArgumentException("degrees of freedom must be above 0, was " + degreesOfFreedom);
            }
        }

        public Standard(double standard) {
            this(standard, MANY);
        }
    }

    /** U = k · u, as on a certificate: u = U/k. */
    record Expanded(double expanded, double coverageFactor) implements Evaluation {
        public Expanded {
            Check.notNegative("expanded uncertainty", expanded, "");
            Check.within("coverage factor", coverageFactor, 1, 20, "");
        }

        @Override
        public double standard() {
            return expanded / coverageFactor;
        }
    }

    /** Anywhere within ±a, as likely here as there: u = a/√3. */
    record Rectangular(double halfWidth) implements Evaluation {
        public Rectangular {
            Check.notNegative("half width", halfWidth, "");
        }

        @Override
        public double standard() {
            return halfWidth / Math.sqrt(3);
        }
    }

    /** The mean of n readings that scatter with the standard deviation s: u = s/√n, ν = n − 1. */
    record Scatter(double standardDeviation, int count) implements Evaluation {
        public Scatter {
            Check.notNegative("standard deviation", standardDeviation, "");
            Check.within("number of readings", count, 2, Integer.MAX_VALUE, "");
        }

        @Override
        public double standard() {
            return standardDeviation / Math.sqrt(count);
        }

        @Override
        public double degreesOfFreedom() {
            return count - 1.0;
        }
    }
}
