package dapple.enclosure;

import java.time.Instant;
import java.util.Optional;

/** When the lamps of an enclosure are off on purpose, [from, to), and why. */
public record PlannedOffTime(long enclosureId, Instant from, Optional<Instant> to, String reason) {
    public PlannedOffTime {
        if (to.filter(end -> !end.isAfter(from)).isPresent()) {
            throw new IllegalArgumentException("planned off must end after it begins, was " + from + " to " + to.get());
        }
    }
}
