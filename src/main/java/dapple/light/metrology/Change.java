package dapple.light.metrology;

import dapple.light.quantity.Interval;

/**
 * A change of ln gain.
 *
 * @param estimate ln, or ln per year
 * @param interval of 95 %
 */
public record Change(double estimate, Interval interval) {
    static Change of(Estimate estimate) {
        return new Change(estimate.size(), interval(estimate));
    }

    static Interval interval(Estimate estimate) {
        double half = COVERAGE_FACTOR * estimate.standardError();
        return new Interval(estimate.size() - half, estimate.size() + half);
    }

    /** As everywhere here, about 95 %. */
    private static final double COVERAGE_FACTOR = 2;
}
