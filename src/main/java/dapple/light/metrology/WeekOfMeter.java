package dapple.light.metrology;

import java.time.Instant;

/**
 * How one meter's readings of a week lie to what was expected of them from all earlier ones: the median over enclosures
 * of ln(reading/expected). A meter that was knocked shows as every lamp changing at once.
 *
 * @param from beginning of the week
 * @param lnShift the median
 * @param standardError of the median, the larger one of what the enclosures' scatter and their uncertainties give
 * @param enclosures how many sets of lamps were read
 */
public record WeekOfMeter(String meter, Instant from, double lnShift, double standardError, int enclosures) {
    /** Fewer enclosures say nothing of a meter (common practice, no source). */
    public static final int LEAST_ENCLOSURES = 8;

    /** ln(reading/expected) below which no meter is suspected: 8 % (common practice, no source). */
    public static final double LEAST_SHIFT = 0.08;

    private static final double STANDARD_ERRORS = 4;

    /** Whether this week alone speaks against the meter: beyond 8 % and beyond 4 standard errors. */
    public boolean isBeyond() {
        return enclosures >= LEAST_ENCLOSURES
                && Math.abs(lnShift) > Math.max(LEAST_SHIFT, STANDARD_ERRORS * standardError);
    }
}
