package dapple.light.judging;

import dapple.light.quantity.Check;

/**
 * A range that a reading should lie in. A low limit of 0 is no limit: nothing lies below it.
 *
 * @param low at least 0, in the unit of the quantity
 * @param high at least low
 */
public record Band(double low, double high) {
    /** Asks nothing of any amount. */
    public static final Band OPEN = new Band(0, Double.MAX_VALUE);

    public Band {
        Check.notNegative("low limit", low, "");
        Check.within("high limit", high, low, Double.MAX_VALUE, "");
    }

    public static Band atMost(double high) {
        return new Band(0, high);
    }

    public boolean hasLow() {
        return low > 0;
    }

    public boolean isOpen() {
        return equals(OPEN);
    }

    /**
     * Guarded acceptance [jcgm106]: on target when the whole interval is inside, too weak or too strong when it is
     * wholly outside, borderline between. In a band that is finer than the meter the value alone decides.
     */
    Found judge(MeasuredAmount measured, MeterUncertainty meter) {
        return meter.isCoarserThan(this)
                ? new Found(byValue(measured.amount()), true)
                : new Found(guarded(measured), false);
    }

    /** What is said of an amount with its interval, by guarded acceptance; no meter is asked. */
    public State of(MeasuredAmount amount) {
        return guarded(amount);
    }

    State byValue(double amount) {
        if (hasLow() && amount < low) {
            return State.TOO_WEAK;
        }
        return amount > high ? State.TOO_STRONG : State.ON_TARGET;
    }

    private State guarded(MeasuredAmount measured) {
        if (hasLow() && measured.interval().high() < low) {
            return State.TOO_WEAK;
        }
        if (measured.interval().low() > high) {
            return State.TOO_STRONG;
        }
        boolean clearsLow = !hasLow() || measured.interval().low() >= low;
        return clearsLow && measured.interval().high() <= high ? State.ON_TARGET : State.BORDERLINE;
    }

    /** What a band alone says of a reading. */
    record Found(State state, boolean finerThanMeter) {}
}
