package dapple.light.design;

/**
 * How good a rig is.
 *
 * @param unmet how many demands are not met
 * @param onlyUnmet index of the one that is not met; −1 if none or more are
 * @param violation sum of ln of the factors that are missing
 * @param loss sum over the demands of the loss at the worst of their receivers
 * @param watts NaN if not known
 * @param unevenness NaN if nobody asks
 */
record Score(int unmet, int onlyUnmet, double violation, double loss, int changes, double watts, double unevenness) {
    /** The largest ln of a factor that counts. */
    private static final double MOST_LOG = 20;

    /** The least, of what just reaches its ceiling. */
    private static final double LEAST_LOG = 1e-9;

    boolean isMet() {
        return unmet == 0;
    }

    static double violation(double factor) {
        return Math.max(LEAST_LOG, Math.min(MOST_LOG, Math.log(factor)));
    }
}
