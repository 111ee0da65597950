package dapple.light.judging;

import dapple.light.quantity.Interval;

/**
 * A reading after calibration, with the interval that the true value lies in.
 *
 * @param amount in the unit of the quantity, inside the interval
 * @param interval 95 %, not below 0 unless the quantity is a temperature
 */
public record MeasuredAmount(double amount, Interval interval) {
    public MeasuredAmount {
        if (!interval.contains(amount)) {
            throw new IllegalArgumentException("amount must lie in its interval " + interval + ", was " + amount);
        }
    }
}
