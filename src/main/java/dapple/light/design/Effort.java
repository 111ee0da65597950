package dapple.light.design;

/**
 * How much is looked at: a count, not a time, so that a search always finds the same.
 *
 * @param mostMixes mixes of one size that are looked at one by one
 * @param starts of wandering where there are more
 */
record Effort(double mostMixes, int starts) {
    static final Effort USUAL = new Effort(3e6, 96);
}
