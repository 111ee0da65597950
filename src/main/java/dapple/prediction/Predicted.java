package dapple.prediction;

import dapple.light.quantity.Interval;

/**
 * A predicted amount with the interval that it lies in, in the unit of its quantity.
 *
 * @param isWhole whether nothing is known to be missing; if not, it is a least
 */
public record Predicted(double amount, Interval interval, boolean isWhole) {}
