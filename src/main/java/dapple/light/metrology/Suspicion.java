package dapple.light.metrology;

/**
 * A change that stood out, and when it first did.
 *
 * @param best its likeliest shape by now
 * @param week in which it was found
 */
record Suspicion(Estimate best, int week) {
    int meter() {
        return best.shape().meter();
    }

    Suspicion with(Estimate now) {
        return new Suspicion(now, week);
    }
}
