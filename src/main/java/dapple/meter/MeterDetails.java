package dapple.meter;

import java.time.Instant;
import java.util.Optional;

/** A meter as the register shows it, with the version that a form changes. */
public record MeterDetails(MeterFacts facts, long version, MeterChange state, Optional<Instant> retiredAt) {
    public boolean isInUse() {
        return retiredAt.isEmpty();
    }
}
