package dapple.meter;

import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The lowest and the highest amount that a meter shows, in the unit of its quantity. */
public record MeterRange(double low, double high) {
    public MeterRange {
        if (!(low < high)) {
            throw new IllegalArgumentException("a range must rise, was " + low + " to " + high);
        }
    }

    /** None: not both ends of it are known. */
    static Optional<MeterRange> of(@Nullable Double low, @Nullable Double high) {
        return low == null || high == null ? Optional.empty() : Optional.of(new MeterRange(low, high));
    }

    public boolean includes(double displayed) {
        return displayed >= low && displayed <= high;
    }
}
