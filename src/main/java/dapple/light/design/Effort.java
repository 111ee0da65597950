package dapple.light.design;

/**
 * How much is looked at: a count, not a time, so that a search always finds the same.
 *
 * @param mostMixes mixes of one size that are looked at one by one
 * @param descents where there are more, shared out among the choices of lamps
 */
record Effort(double mostMixes, int descents) {
    private static final int LEAST_DESCENTS = 3;
    private static final int MOST_DESCENTS = 48;

    static final Effort USUAL = new Effort(3e6, 6000);

    /** As many mixes, and the fewest descents. */
    Effort least() {
        return new Effort(mostMixes, 0);
    }

    /** The descents for each of some choices of lamps. */
    int descentsEach(int choices) {
        return Math.max(LEAST_DESCENTS, Math.min(MOST_DESCENTS, descents / Math.max(1, choices)));
    }
}
