package dapple.rig;

import java.time.Instant;
import java.util.Optional;

/**
 * How long a part of a rig held, [from, to).
 *
 * @param begunBy the change that began it
 * @param begunRecordedAt when that was said
 * @param endedBy the change that ended it; empty while it holds
 * @param endRecordedAt when that was said
 */
public record Span(
        Instant from,
        Optional<Instant> to,
        long begunBy,
        Instant begunRecordedAt,
        Optional<Long> endedBy,
        Optional<Instant> endRecordedAt) {

    /** Of a part that is only thought of. */
    public static Span thought(Instant from) {
        return new Span(from, Optional.empty(), 0, from, Optional.empty(), Optional.empty());
    }

    public boolean isOpen() {
        return to.isEmpty();
    }

    public boolean holds(Instant at) {
        return !at.isBefore(from) && to.filter(end -> !at.isBefore(end)).isEmpty();
    }
}
