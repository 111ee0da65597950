package dapple.enclosure;

import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** An enclosure in use, and the time for which its lamps are off on purpose, if they are. */
public record EnclosureToday(EnclosureFacts enclosure, Optional<PlannedOffTime> plannedOff) {
    /** Of what the query names. */
    EnclosureToday(EnclosureFacts enclosure, @Nullable PlannedOff plannedOff) {
        this(enclosure, Optional.ofNullable(plannedOff).map(PlannedOff::time));
    }
}
