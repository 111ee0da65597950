package dapple.reading;

import dapple.light.quantity.Quantity;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/**
 * A point that was not read, and why, to record.
 *
 * @param quantity what was not read, where the outcome speaks of one quantity alone
 */
public record Unread(UUID key, VisitPlace place, Outcome outcome, Optional<Quantity> quantity, Instant notedAt) {
    /** Of a point as a whole. */
    public Unread(UUID key, VisitPlace place, Outcome outcome, Instant notedAt) {
        this(key, place, outcome, Optional.empty(), notedAt);
    }
}
