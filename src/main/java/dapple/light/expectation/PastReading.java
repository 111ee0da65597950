package dapple.light.expectation;

import dapple.light.quantity.Check;

/**
 * A reading of a point since its light was last changed.
 *
 * @param amount corrected by the meter's calibration, in the unit of the quantity
 * @param daysAgo how long ago it was taken, days, at least 0
 */
public record PastReading(double amount, double daysAgo) {
    public PastReading {
        Check.within("amount", amount, -Double.MAX_VALUE, Double.MAX_VALUE, "");
        Check.notNegative("days ago", daysAgo, "days");
    }
}
