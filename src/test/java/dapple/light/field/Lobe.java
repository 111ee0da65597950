package dapple.light.field;

import dapple.light.source.Beam;
import java.util.function.DoubleUnaryOperator;

/**
 * How a beam spreads, by a formula of its own, and the same as the engine knows it.
 *
 * @param towards relative intensity for a cosine of the angle from the aim
 * @param jump cosine at which it jumps to 0; 0 if it does not
 */
record Lobe(Beam beam, DoubleUnaryOperator towards, double jump) {
    enum Kind {
        EXPONENT,
        BEAM_ANGLE,
        TABLE
    }

    static Lobe random(Kind kind, Chance chance) {
        return switch (kind) {
            case EXPONENT -> {
                double exponent = chance.oneIn(10) ? 0 : chance.logBetween(0.3, 200);
                yield new Lobe(new Beam.Power(exponent), power(exponent), 0);
            }
            case BEAM_ANGLE -> {
                double degrees = chance.between(8, 150);
                double half = Math.cos(Math.toRadians(degrees) / 2);
                yield new Lobe(Beam.Power.ofBeamAngle(degrees), power(Math.log(2) / -Math.log(half)), 0);
            }
            case TABLE -> table(chance);
        };
    }

    private static DoubleUnaryOperator power(double exponent) {
        return cosine -> cosine > 0 ? Math.exp(exponent * Math.log(cosine)) : 0;
    }

    /** Falling or with a hump, to 0 or with a sharp end. */
    private static Lobe table(Chance chance) {
        int rows = 3 + chance.below(6);
        double last = chance.between(20, 90);
        double hump = chance.between(0, 1.2);
        double end = chance.oneIn(2) ? 0 : chance.between(0.05, 0.5);
        double[] theta = new double[rows];
        double[] relative = new double[rows];
        for (int row = 0; row < rows; row++) {
            double share = (double) row / (rows - 1);
            theta[row] = last * share;
            relative[row] = 1 - share + hump * share * (1 - share) * 4 + end * share;
        }
        double jump = end > 0 ? Math.cos(Math.toRadians(last)) : 0;
        return new Lobe(new Beam.Table(theta, relative), cosine -> looked(theta, relative, cosine), jump);
    }

    private static double looked(double[] theta, double[] relative, double cosine) {
        double angle = Math.toDegrees(Math.acos(Math.min(1, cosine)));
        for (int row = 1; row < theta.length && cosine > 0; row++) {
            if (angle <= theta[row]) {
                double share = (angle - theta[row - 1]) / (theta[row] - theta[row - 1]);
                return relative[row - 1] * (1 - share) + relative[row] * share;
            }
        }
        return 0;
    }
}
