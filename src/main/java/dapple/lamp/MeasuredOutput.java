package dapple.lamp;

import java.time.Instant;
import java.util.Optional;

/** What was measured of a lamp, when and by whom, and whether it still counts. */
public record MeasuredOutput(
        long id,
        LampOutput output,
        Instant measuredAt,
        long personId,
        boolean stands,
        Optional<Instant> withdrawnAt,
        Optional<Long> withdrawnBy,
        Optional<String> withdrawnReason) {}
