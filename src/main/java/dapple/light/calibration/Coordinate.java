package dapple.light.calibration;

import dapple.light.quantity.Interval;

/**
 * How a parameter is counted. In its coordinate g the uncertainty is about the same up and down, so that intervals are
 * made there; the fit itself moves in a free number that no step can take out of the parameter's range.
 */
sealed interface Coordinate {
    /** g of a value. */
    double of(double value);

    /** The value at g, within its range. */
    double value(double g);

    /** dvalue/dg. */
    double slope(double value);

    /** The free number at g, to start from. */
    double free(double g);

    /** g at a free number. */
    double bound(double free);

    /** dg/dfree. */
    double boundSlope(double free);

    /** Largest standard uncertainty of g with which the parameter counts as determined. */
    double limit();

    /** The values from g − U to g + U. */
    default Interval around(double value, double expanded) {
        return new Interval(value(of(value) - expanded), value(of(value) + expanded));
    }

    /**
     * g = ln(value + shift), for values above −shift.
     *
     * @param shift at least 0
     */
    record Logarithm(double shift) implements Coordinate {
        /** Beyond e^±300 nothing is left to compute with. */
        private static final double FARTHEST = 300;

        @Override
        public double of(double value) {
            return Math.log(value + shift);
        }

        @Override
        public double value(double g) {
            return Math.exp(Math.max(-FARTHEST, Math.min(FARTHEST, g))) - shift;
        }

        @Override
        public double slope(double value) {
            return value + shift;
        }

        @Override
        public double free(double g) {
            return g;
        }

        @Override
        public double bound(double free) {
            return free;
        }

        @Override
        public double boundSlope(double free) {
            return 1;
        }

        @Override
        public double limit() {
            return 0.5;
        }
    }

    /**
     * g = ln(1 + value), for exponents from 0 up: value = free².
     *
     * @param most largest value
     */
    record Power(double most) implements Coordinate {
        private static final double LEAST_START = 0.1;

        @Override
        public double of(double value) {
            return Math.log1p(value);
        }

        @Override
        public double value(double g) {
            return Math.min(most, Math.max(0, Math.expm1(g)));
        }

        @Override
        public double slope(double value) {
            return 1 + value;
        }

        /** Not from 0, where the square does not move. */
        @Override
        public double free(double g) {
            return Math.sqrt(Math.max(LEAST_START, value(g)));
        }

        @Override
        public double bound(double free) {
            return of(Math.min(most, free * free));
        }

        @Override
        public double boundSlope(double free) {
            return free * free < most ? 2 * free / (1 + free * free) : 0;
        }

        @Override
        public double limit() {
            return 0.5;
        }
    }

    /** g = value, for shares from 0 to 1: value = sin² free. */
    record Share() implements Coordinate {
        private static final double LEAST_START = 0.02;

        @Override
        public double of(double value) {
            return value;
        }

        @Override
        public double value(double g) {
            return Math.max(0, Math.min(1, g));
        }

        @Override
        public double slope(double value) {
            return 1;
        }

        /** Neither from 0 nor from 1, where the sine does not move. */
        @Override
        public double free(double g) {
            return Math.asin(Math.sqrt(Math.max(LEAST_START, Math.min(1 - LEAST_START, g))));
        }

        @Override
        public double bound(double free) {
            return Math.sin(free) * Math.sin(free);
        }

        @Override
        public double boundSlope(double free) {
            return Math.sin(2 * free);
        }

        @Override
        public double limit() {
            return 0.25;
        }
    }
}
