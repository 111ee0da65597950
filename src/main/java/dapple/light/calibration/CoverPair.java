package dapple.light.calibration;

import dapple.light.quantity.Check;
import dapple.light.uncertainty.StandardUncertainty;

/**
 * One lamp read twice in one place by one meter: through a cover, and without it.
 *
 * @param through reading through the cover, 0 to 1e12
 * @param open reading without it, above 0, to 1e12
 * @param uncertainty of each of the two by itself; the meter's calibration is no part of it, since it cancels
 */
public record CoverPair(double through, double open, StandardUncertainty uncertainty) {
    private static final double MOST = 1e12;

    public CoverPair {
        Check.within("reading through a cover", through, 0, MOST, "");
        Check.within("reading without a cover", open, Double.MIN_NORMAL, MOST, "");
        if (through == 0 && uncertainty.absolute() == 0) {
            throw new IllegalArgumentException("a reading of 0 must have an absolute uncertainty");
        }
    }

    /** through / open. */
    public double ratio() {
        return through / open;
    }

    /**
     * Of a ratio T: u² = (u(through)² + T² · u(open)²)/open² [jcgm100, eq. 12], both uncertainties at what T says should
     * have been read.
     */
    StandardUncertainty ofRatio() {
        double relative = Math.hypot(uncertainty.relative(), uncertainty.at(open) / open);
        return new StandardUncertainty(relative, uncertainty.absolute() / open);
    }
}
