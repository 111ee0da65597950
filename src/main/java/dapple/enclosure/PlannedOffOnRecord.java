package dapple.enclosure;

import java.time.Instant;
import java.util.Optional;

/** A planned-off time with who said it and when, and when it was called off, if it was. */
public record PlannedOffOnRecord(
        PlannedOffTime time, Instant recordedAt, long recordedBy, Optional<Instant> calledOffAt) {}
