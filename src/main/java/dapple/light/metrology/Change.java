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

    /**
     * The same of a change that was told because it stood out. By where its search stops its size is too large by about 1/z
     * of a standard error [siegmund1978], and what the model leaves out, such as readings before a knock in its very week,
     * makes the errors of simulated findings 1.04 to 1.13 times as large as the standard error. So the factor is calibrated
     * [loh1987]: the mean of those, 1.075, times 2. Tried for knocks of 6 to 20 % and drifts of 10 % a year: docs/physics.md.
     */
    private static final double COVERAGE_FACTOR_TOLD = 2.15;

    static Change of(Estimate estimate) {
        return of(estimate.size(), estimate.standardError());
    }

    static Change of(double estimate, double standardError) {
        return within(estimate, COVERAGE_FACTOR * standardError);
    }

    static Change ofTold(Estimate estimate) {
        return within(estimate.size(), COVERAGE_FACTOR_TOLD * estimate.standardError());
    }

    private static Change within(double estimate, double half) {
        return new Change(estimate, new Interval(estimate - half, estimate + half));
    }
}
