package dapple.reading;

import dapple.light.quantity.Check;
import java.time.Instant;
import java.util.UUID;

/**
 * A reading to record.
 *
 * @param key made where it was typed: the same key is stored once, however often it is sent
 * @param amount as displayed, 0 or more, in the unit of the meter's quantity
 */
public record Entry(UUID key, VisitPlace place, long meterId, double amount, Instant takenAt) {
    public Entry {
        Check.notNegative("reading", amount, "");
    }
}
