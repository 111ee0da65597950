package dapple.light.spectrum;

import dapple.light.quantity.Check;

/**
 * Wavelengths from one to another, both included.
 *
 * @param fromNanometres 1 to 1,000,000
 * @param toNanometres above the first, to 1,000,000
 */
public record Range(double fromNanometres, double toNanometres) {
    public Range {
        Check.within("from", fromNanometres, Spectrum.SHORTEST_NANOMETRES, Spectrum.LONGEST_NANOMETRES, "nm");
        Check.within("to", toNanometres, Math.nextUp(fromNanometres), Spectrum.LONGEST_NANOMETRES, "nm");
    }

    /** All that a spectrum may have. */
    static final Range ALL = new Range(Spectrum.SHORTEST_NANOMETRES, Spectrum.LONGEST_NANOMETRES);

    /** Where a spectrum says how much there is: all over where it is only lines, for nobody knows where they were sought. */
    static Range of(Spectrum spectrum) {
        return spectrum.isSampled() ? new Range(spectrum.shortestNanometres(), spectrum.longestNanometres()) : ALL;
    }

    double wattsPerSquareMetre(Spectrum spectrum) {
        return Weight.oneFrom(fromNanometres, toNanometres).of(spectrum);
    }
}
