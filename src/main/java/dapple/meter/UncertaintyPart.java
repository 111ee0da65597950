package dapple.meter;

import dapple.light.metrology.Cause;
import dapple.light.metrology.Contribution;
import dapple.light.quantity.Check;

/**
 * One part of a meter's uncertainty, as somebody states it.
 *
 * @param percent of the reading, above 0, below 100
 * @param source who says so, where
 */
public record UncertaintyPart(Cause cause, double percent, UncertaintyKind kind, String source) {
    private static final double PERCENT = 100;

    public UncertaintyPart {
        Check.within("part of an uncertainty", percent, Double.MIN_NORMAL, Math.nextDown(PERCENT), "%");
        if (cause == Cause.RESOLUTION) {
            throw new IllegalArgumentException("the step of the display is the meter's own, not a stated part");
        }
    }

    /** As a standard uncertainty, percent of the reading. */
    public double standardPercent() {
        return PERCENT * kind.of(percent / PERCENT).standard();
    }

    Contribution contribution() {
        return Contribution.ofShare(cause, kind.of(percent / PERCENT));
    }
}
