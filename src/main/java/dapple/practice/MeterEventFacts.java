package dapple.practice;

import dapple.meter.Withdrawal;
import java.time.Instant;
import java.util.Optional;

/**
 * Something that happened to a meter.
 *
 * @param note where, by whom; may be empty
 * @param withdrawal empty: it stands
 */
public record MeterEventFacts(
        long id,
        long meterId,
        MeterEventKind kind,
        Instant at,
        String note,
        long recordedBy,
        Optional<Withdrawal> withdrawal) {}
