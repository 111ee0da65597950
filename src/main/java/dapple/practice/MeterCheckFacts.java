package dapple.practice;

import java.time.Instant;
import java.util.Optional;

/**
 * A check of a meter.
 *
 * @param amount as displayed, in the unit of the meter's quantity
 * @param lowest least amount within the limits of that day
 * @param highest largest amount within the limits of that day
 */
public record MeterCheckFacts(
        long meterId,
        CheckKind kind,
        Optional<Long> lampId,
        double amount,
        double lowest,
        double highest,
        boolean good,
        Instant at,
        String note,
        long recordedBy) {}
