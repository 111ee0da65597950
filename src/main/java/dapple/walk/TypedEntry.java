package dapple.walk;

import dapple.enclosure.Facing;
import dapple.light.quantity.Quantity;
import dapple.reading.Outcome;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What a phone sends of one step of a walk: a reading, or why there is none. Nothing in it is trusted; anything may be missing.
 *
 * @param personId who typed it
 * @param takenAt by the phone's clock
 * @param sentAt by the same clock, when it was sent: so its error is known
 * @param secondsAtPoint how long who typed it stood there
 */
record TypedEntry(
        @Nullable UUID key,
        @Nullable UUID visitKey,
        @Nullable Long personId,
        @Nullable Long enclosureId,
        @Nullable Long pointId,
        @Nullable Quantity quantity,
        @Nullable Long meterId,
        @Nullable BigDecimal amount,
        @Nullable Facing held,
        @Nullable Outcome outcome,
        @Nullable Instant takenAt,
        @Nullable Instant sentAt,
        @Nullable Double secondsAtPoint) {

    boolean isWhole() {
        return key != null
                && visitKey != null
                && personId != null
                && enclosureId != null
                && pointId != null
                && quantity != null
                && takenAt != null
                && sentAt != null
                && (secondsAtPoint == null || Double.isFinite(secondsAtPoint))
                && (outcome != null || (amount != null && meterId != null));
    }
}
