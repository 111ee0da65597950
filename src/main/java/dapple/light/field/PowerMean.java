package dapple.light.field;

/**
 * The mean of a power of the distance between a place and the elements of a small disc or a short segment. With h the
 * place's distance from the plane of the disc or the line of the segment, R the radius or half the length, and s the
 * square distance from the middle, the mean of a function f of the elements in N dimensions is the series
 * f + R²/(2(N+2)) ∇²f + …, of which the k-th term holds ∇^2k f [pizzetti1909]. Since there
 * ∇² (h^2b s^−μ) = (4μ(μ+1) − 2Nμ) h^2b s^−μ−1 − 4μ(μ+1) h^2b+2 s^−μ−2, the mean of s^−m is s^−m Σ τ^k P_k(h²/s) with
 * τ = R²/s and polynomials that depend on m and N alone.
 */
final class PowerMean {
    /** Terms after the first. */
    private static final int MOST = 10;

    /** The coefficients of all polynomials, one after the other: of the k-th, k + 1 from the lowest. */
    private final double[] coefficients;

    /** What τ^k times a polynomial never exceeds, over τ^k. */
    private final double[] bounds;

    private PowerMean(double[] coefficients, double[] bounds) {
        this.coefficients = coefficients;
        this.bounds = bounds;
    }

    /** A sum over its first term, and what is left out at most; infinite if too much would be. */
    record Sum(double value, double error) {}

    /**
     * The mean of s^−m.
     *
     * @param dimensions 2 of a disc, 1 of a segment
     */
    static PowerMean ofPower(double power, int dimensions) {
        double[] found = new double[start(MOST + 1)];
        found[0] = 1;
        for (int k = 0; k < MOST; k++) {
            double share = 1 / (2 * (k + 1.0) * (2 * k + dimensions + 2.0));
            for (int b = 0; b <= k; b++) {
                double mu = power + k + b;
                double scaled = share * found[start(k) + b];
                found[start(k + 1) + b] += (4 * mu * (mu + 1) - 2 * dimensions * mu) * scaled;
                found[start(k + 1) + b + 1] -= 4 * mu * (mu + 1) * scaled;
            }
        }
        return new PowerMean(found, bounds(power, dimensions));
    }

    /**
     * The mean of q s^−m, q the way in the plane or line, over that of the middle: q s^−m is the slope of
     * −s^1−m / 2(m−1). Its bounds are taken from the next power.
     */
    static PowerMean ofWay(double power, int dimensions) {
        double[] found = ofPower(power - 1, dimensions).coefficients;
        for (int k = 0; k <= MOST; k++) {
            for (int b = 0; b <= k; b++) {
                found[start(k) + b] *= (power - 1 + k + b) / (power - 1);
            }
        }
        return new PowerMean(found, bounds(power + 1, dimensions));
    }

    /**
     * Along a direction the power is a series with Gegenbauer's polynomials, which none exceed their value at 1, the
     * binomial of 2m + n − 1 over n [dlmf, 18.14.4]; the mean of the 2k-th power of the way over the radius is
     * N/(2k + N).
     */
    private static double[] bounds(double power, int dimensions) {
        double[] found = new double[MOST + 3];
        double binomial = 1;
        for (int k = 0; k < found.length; k++) {
            found[k] = binomial * dimensions / (2 * k + dimensions);
            int n = 2 * k;
            binomial *= (2 * power + n) / (n + 1) * (2 * power + n + 1) / (n + 2);
        }
        return found;
    }

    private static int start(int k) {
        return k * (k + 1) / 2;
    }

    /**
     * Sums until what is left is small.
     *
     * @param tau R²/s
     * @param rise h²/s
     * @param accuracy the share of the first term that may be left out
     */
    Sum at(double tau, double rise, double accuracy) {
        double sum = 1;
        double power = tau;
        for (int k = 0; k <= MOST; k++) {
            double left = power * bounds[k + 1];
            double ratio = tau * bounds[k + 2] / bounds[k + 1];
            if (left <= accuracy * (1 - ratio)) {
                return new Sum(sum, left / (1 - ratio));
            }
            if (k < MOST) {
                sum += power * polynomial(k + 1, rise);
                power *= tau;
            }
        }
        return new Sum(sum, Double.POSITIVE_INFINITY);
    }

    private double polynomial(int k, double at) {
        double value = 0;
        for (int index = start(k + 1) - 1; index >= start(k); index--) {
            value = value * at + coefficients[index];
        }
        return value;
    }
}
