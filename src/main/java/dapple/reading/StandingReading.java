package dapple.reading;

import dapple.light.quantity.Quantity;
import java.time.Instant;

/**
 * A reading that counts, as comparisons need it.
 *
 * @param amount as displayed, in the unit of the quantity
 */
public record StandingReading(
        long enclosureId, long pointId, long meterId, Quantity quantity, double amount, Instant takenAt) {}
