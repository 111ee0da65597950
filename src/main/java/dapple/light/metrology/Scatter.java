package dapple.light.metrology;

import java.util.List;

/** By what factor readings scatter more or less than their uncertainties say; learnt from the middle of each week's. */
final class Scatter {
    /** Median of |z| where z is normal, its 75 % quantile. */
    private static final double MIDDLE = 0.6745;

    /** So many readings' worth of belief in a factor of 1 (ours). */
    private static final double BELIEF = 100;

    private static final double LEAST = 0.3;
    private static final double MOST = 3;

    private double logarithm;
    private double weight = BELIEF;

    double factor() {
        return Math.exp(logarithm);
    }

    /** @param standardised a week's differences from what was expected, in standard deviations by the present factor */
    void learn(List<Double> standardised) {
        if (standardised.size() < 2) {
            return;
        }
        double scale = Middle.of(standardised.stream().map(Math::abs).toList()) / MIDDLE;
        double ratio = Math.max(LEAST, Math.min(MOST, scale));
        weight += standardised.size();
        logarithm += Math.log(ratio) * standardised.size() / weight;
        logarithm = Math.max(Math.log(LEAST), Math.min(Math.log(MOST), logarithm));
    }
}
