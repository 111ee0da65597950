package dapple.agreement;

import java.time.Instant;
import java.util.Optional;

/**
 * How one meter's readings of a week lie to what was expected of them: the median over enclosures of ln(reading/expected).
 *
 * @param standardError of ln; none: not known
 */
record WeekShown(Instant from, double lnShift, Optional<Double> standardError, int enclosures, boolean isBeyond) {
    public double percent() {
        return Percent.of(lnShift);
    }

    /** Four standard errors, beyond which a week speaks against the meter, in percent. */
    public Optional<Double> fourErrorsPercent() {
        return standardError.map(error -> Percent.of(4 * error));
    }
}
