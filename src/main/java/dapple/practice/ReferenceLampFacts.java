package dapple.practice;

import java.time.Instant;
import java.util.Optional;

/**
 * A lamp that a meter is, or was, checked by.
 *
 * @param firstAmount as displayed, in the unit of the meter's quantity
 * @param endedAt since when another one, or none, is in its place
 */
public record ReferenceLampFacts(
        long id,
        long meterId,
        String name,
        String setUp,
        double firstAmount,
        Instant firstAt,
        Optional<Instant> endedAt,
        long recordedBy) {}
