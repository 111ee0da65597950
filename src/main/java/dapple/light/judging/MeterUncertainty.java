package dapple.light.judging;

import dapple.light.quantity.Check;
import dapple.light.quantity.Interval;

/**
 * Expanded uncertainty of a hand-held reading y: U = √((f·y)² + (2·r/√12)²), coverage factor 2 (about 95 %): a share f
 * of the reading, and the rectangular distribution of the display's step r [jcgm100].
 *
 * @param share f, from 0 to below 1
 * @param resolution r, smallest step of the display, above 0, in the unit of the quantity
 */
public record MeterUncertainty(double share, double resolution) {
    /** Expanded uncertainty of a hand-held UV-index reading under lamps: 20 % (common practice, no source). */
    public static final double DEFAULT_SHARE = 0.20;

    public MeterUncertainty {
        Check.within("share", share, 0, Math.nextDown(1.0), "");
        Check.within("resolution", resolution, Double.MIN_NORMAL, Double.MAX_VALUE, "");
    }

    public static MeterUncertainty ofResolution(double resolution) {
        return new MeterUncertainty(DEFAULT_SHARE, resolution);
    }

    /** Expanded uncertainty U of an amount, in its unit. */
    public double expanded(double amount) {
        return Math.hypot(share * amount, floor());
    }

    /** The amount from y − U to y + U, cut off at 0. */
    public MeasuredAmount around(double amount) {
        Check.notNegative("amount", amount, "");
        double expanded = expanded(amount);
        return new MeasuredAmount(amount, new Interval(Math.max(0, amount - expanded), amount + expanded));
    }

    /**
     * Whether no amount at all could have its whole interval inside the band: the band is finer than the meter. The
     * smallest amount whose interval clears the low limit solves y − U(y) = low; it must clear the high limit too.
     */
    public boolean isCoarserThan(Band band) {
        double smallest = band.low() > 0 ? smallestClearOf(band.low()) : 0;
        return smallest + expanded(smallest) > band.high();
    }

    private double smallestClearOf(double low) {
        double rest = 1 - share * share;
        double root = Math.sqrt(low * low - rest * (low * low - floor() * floor()));
        return (low + root) / rest;
    }

    private double floor() {
        return 2 * resolution / Math.sqrt(12);
    }
}
