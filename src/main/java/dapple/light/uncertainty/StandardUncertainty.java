package dapple.light.uncertainty;

import dapple.light.judging.MeterUncertainty;
import dapple.light.quantity.Check;

/**
 * Standard uncertainty of a reading y: u = √((relative · y)² + absolute²) [jcgm100].
 *
 * @param relative share of the reading, 0 to 10
 * @param absolute in the unit of the reading, at least 0; one of the two is above 0
 */
public record StandardUncertainty(double relative, double absolute) {
    /** Largest share that is taken: ten times the reading. */
    private static final double MOST = 10;

    public StandardUncertainty {
        Check.within("relative uncertainty", relative, 0, MOST, "");
        Check.notNegative("absolute uncertainty", absolute, "");
        if (relative == 0 && absolute == 0) {
            throw new IllegalArgumentException("an uncertainty must be above 0");
        }
    }

    public static StandardUncertainty relative(double share) {
        return new StandardUncertainty(share, 0);
    }

    public static StandardUncertainty absolute(double amount) {
        return new StandardUncertainty(0, amount);
    }

    /** Half of a meter's expanded uncertainty: f/2 of the reading, a/2, and r/√12 for the step r of its display. */
    public static StandardUncertainty of(MeterUncertainty meter) {
        return new StandardUncertainty(
                meter.share() / 2, Math.hypot(meter.absolute() / 2, meter.resolution() / Math.sqrt(12)));
    }

    /** u of an amount, in its unit. */
    public double at(double amount) {
        return Math.hypot(relative * amount, absolute);
    }
}
