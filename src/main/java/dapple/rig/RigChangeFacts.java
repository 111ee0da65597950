package dapple.rig;

import java.time.Duration;
import java.time.Instant;

/**
 * A change of a rig as others see it. Its id names the rig that has held since.
 *
 * @param at when it happened
 * @param recordedAt when it was said
 * @param recordedBy the person who said it
 */
public record RigChangeFacts(
        long id, long enclosureId, Instant at, RigChangeKind kind, String note, Instant recordedAt, long recordedBy) {
    /** What is said within a day counts as said at once (a definition of ours). */
    private static final Duration AT_ONCE = Duration.ofDays(1);

    /** Whether a reading can tell it: of a timer it cannot. */
    public boolean isOfLight() {
        return kind != RigChangeKind.TIMER_CHANGED;
    }

    public boolean isLate() {
        return recordedAt.isAfter(at.plus(AT_ONCE));
    }
}
