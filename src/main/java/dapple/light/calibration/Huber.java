package dapple.light.calibration;

import org.hipparchus.distribution.continuous.NormalDistribution;

/** Huber's loss, which lets a residual beyond c pull no harder than one of c [huber1964]. */
final class Huber {
    /** c: 95 % as efficient as least squares where all is normal. */
    static final double C = 1.345;

    private static final NormalDistribution NORMAL = new NormalDistribution();
    private static final double INSIDE = 2 * NORMAL.cumulativeProbability(C) - 1;
    private static final double SQUARE =
            INSIDE - 2 * C * NORMAL.density(C) + 2 * C * C * (1 - NORMAL.cumulativeProbability(C));

    /** What a covariance of least squares is multiplied by: E ψ²/(E ψ′)², 1.053. */
    static final double VARIANCE = SQUARE / (INSIDE * INSIDE);

    private Huber() {}

    /** The weight ψ(r)/r of a residual in standard units. */
    static double weight(double residual) {
        return Math.abs(residual) <= C ? 1 : C / Math.abs(residual);
    }

    /** r · ψ(r) over what it is on average where all is normal: there its mean is 1, as that of r² is. */
    static double square(double residual) {
        return residual * residual * weight(residual) / INSIDE;
    }
}
