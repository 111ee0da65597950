package dapple.light.metrology;

/**
 * A change that stood out, and when it first did.
 *
 * @param best its likeliest shape by now
 * @param week in which it was found
 */
record Suspicion(Estimate best, int week) {
    /** Below so many standard errors a change is believed no more (ours). */
    private static final double BELIEVED = 3;

    int meter() {
        return best.shape().meter();
    }

    Suspicion with(Estimate now) {
        return new Suspicion(now, week);
    }

    /** Whether later readings still bear it out: it stands out, and did not begin after it was found. */
    boolean isBorneOut() {
        return best.z() > BELIEVED && best.shape().week() <= week;
    }
}
