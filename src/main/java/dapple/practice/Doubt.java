package dapple.practice;

import java.time.Instant;
import java.util.Optional;

/**
 * A time over which the readings of a meter are in doubt as it was dropped.
 *
 * @param from its last good check before; none: it was never checked
 * @param until when it was good again; none: not yet
 * @param isCondemned whether a check after the drop was out of its limits
 */
public record Doubt(Instant droppedAt, Optional<Instant> from, Optional<Instant> until, boolean isCondemned) {
    /** Whether a reading of an instant is in doubt. */
    public boolean covers(Instant takenAt) {
        return from.filter(good -> takenAt.isBefore(good)).isEmpty()
                && until.filter(good -> !takenAt.isBefore(good)).isEmpty();
    }
}
