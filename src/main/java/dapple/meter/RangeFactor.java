package dapple.meter;

import dapple.light.quantity.Check;

/**
 * What displayed amounts of one range are multiplied by.
 *
 * @param upTo the last amount of the range, as displayed; it begins where the one before ends
 * @param factor true value over displayed value, 0.1 to 9.9
 */
public record RangeFactor(double upTo, double factor) {
    public RangeFactor {
        Check.within("calibration factor", factor, 0.1, 9.9, "");
        if (Double.isNaN(upTo)) {
            throw new IllegalArgumentException("the end of a range must be a number, was " + upTo);
        }
    }
}
