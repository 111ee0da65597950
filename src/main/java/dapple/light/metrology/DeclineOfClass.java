package dapple.light.metrology;

import dapple.light.quantity.Check;

/**
 * How fast the lamps of a class decline: ln of the output falls by a rate that is log-normal from lamp to lamp.
 *
 * @param medianPerHour median of the rate per lamp hour, at least 0
 * @param lnScatter standard deviation of its logarithm, 0 to 3
 * @param hoursPerYear hours that the lamp burns in a year, 0 to 8784
 */
public record DeclineOfClass(double medianPerHour, double lnScatter, double hoursPerYear) {
    public DeclineOfClass {
        Check.within("decline", medianPerHour, 0, 1, "per hour");
        Check.within("scatter of the logarithm", lnScatter, 0, 3, "");
        Check.within("hours a year", hoursPerYear, 0, 8784, "h");
    }

    /** Mean of the rates, ln per year. */
    double meanPerYear() {
        return medianPerHour * hoursPerYear * Math.exp(lnScatter * lnScatter / 2);
    }

    /** Variance of the rates, (ln per year)². */
    double variancePerYear() {
        return meanPerYear() * meanPerYear() * Math.expm1(lnScatter * lnScatter);
    }
}
