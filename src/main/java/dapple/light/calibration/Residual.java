package dapple.light.calibration;

/**
 * How one reading fits.
 *
 * @param predicted what the fitted lamp gives there, in the unit of the reading
 * @param inStandardUnits (reading − predicted)/u, u for what is predicted
 */
public record Residual(BenchReading reading, double predicted, double inStandardUnits) {
    /** Beyond this many standard uncertainties a reading does not fit: by chance one in two thousand does. */
    public static final double MOST = 3.5;

    public boolean fits() {
        return Math.abs(inStandardUnits) <= MOST;
    }
}
