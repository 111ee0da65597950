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
    private static final int MOST = 8;

    /** A series with a term above this share of its first is not trusted to fall. */
    private static final double FALLING = 0.5;

    /** A term may be small by chance, and so the one before it counts too, by this share. */
    private static final double OF_LAST_BUT_ONE = 0.25;

    /** The coefficients of all polynomials, one after the other: of the k-th, k + 1 from the lowest. */
    private final double[] coefficients;

    private PowerMean(double[] coefficients) {
        this.coefficients = coefficients;
    }

    /** A sum over its first term, and the size of what is left out; infinite if the terms did not fall. */
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
        return new PowerMean(found);
    }

    /** The mean of q s^−m, q the way in the plane or line, over that of the middle: q s^−m is the slope of −s^1−m / 2(m−1). */
    static PowerMean ofWay(double power, int dimensions) {
        PowerMean mean = ofPower(power - 1, dimensions);
        for (int k = 0; k <= MOST; k++) {
            for (int b = 0; b <= k; b++) {
                mean.coefficients[start(k) + b] *= (power - 1 + k + b) / (power - 1);
            }
        }
        return mean;
    }

    private static int start(int k) {
        return k * (k + 1) / 2;
    }

    /**
     * Sums until a term is small.
     *
     * @param tau R²/s
     * @param rise h²/s
     * @param accuracy the share of the sum that may be left out
     */
    Sum at(double tau, double rise, double accuracy) {
        double sum = 1;
        double power = 1;
        double last = 1;
        for (int k = 1; k <= MOST; k++) {
            power *= tau;
            double term = power * polynomial(k, rise);
            double size = Math.abs(term);
            sum += term;
            if (size > FALLING) {
                break;
            }
            double error = Math.max(size, OF_LAST_BUT_ONE * last);
            if (error <= accuracy * sum) {
                return new Sum(sum, error);
            }
            last = size;
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
