package dapple.light.metrology;

import dapple.light.quantity.Interval;

/**
 * A change of ln gain.
 *
 * @param estimate ln, or ln per year
 * @param interval of 95 %
 */
public record Change(double estimate, Interval interval) {
    /** As everywhere here, about 95 %. */
    private static final double COVERAGE_FACTOR = 2;

    static Change of(Estimate estimate) {
        return of(estimate.size(), estimate.standardError());
    }

    static Change of(double estimate, double standardError) {
        double half = COVERAGE_FACTOR * standardError;
        return new Change(estimate, new Interval(estimate - half, estimate + half));
    }
}
