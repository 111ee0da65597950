package dapple.agreement;

import dapple.light.metrology.UncertaintyBudget;
import dapple.meter.MeterPast;

/** What is uncertain of the logarithm of one reading apart from what all readings by its meter share. */
final class OwnScatter {
    /** Of a reading by hand, place and angle together, where the meter's parts do not say: 10 % (ours). */
    private static final double BY_HAND = 0.10;

    /** Of a reading in the holder of a reference lamp: 4 % (ours). */
    private static final double IN_A_HOLDER = 0.04;

    /** Readings of fewer steps of the display say nothing of a meter (ours). */
    private static final double LEAST_STEPS = 5;

    private OwnScatter() {}

    /** Whether a displayed amount is fine enough to be compared. */
    static boolean isFine(MeterPast past, double displayed) {
        return displayed >= LEAST_STEPS * step(past);
    }

    static double byHand(MeterPast past, double displayed) {
        return past.budget()
                .filter(OwnScatter::saysOwn)
                .map(budget -> Math.min(1, budget.ownInLogarithm(displayed)))
                .orElseGet(() -> with(BY_HAND, past, displayed));
    }

    static double inAHolder(MeterPast past, double displayed) {
        return with(IN_A_HOLDER, past, displayed);
    }

    private static double with(double share, MeterPast past, double displayed) {
        return Math.min(1, Math.hypot(share, step(past) / Math.sqrt(12) / displayed));
    }

    private static boolean saysOwn(UncertaintyBudget budget) {
        return budget.contributions().stream().anyMatch(part -> !part.cause().isShared());
    }

    private static double step(MeterPast past) {
        return past.meter().uncertainty().resolution();
    }
}
