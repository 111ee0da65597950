package dapple.round;

import java.time.Instant;

/**
 * Why a round was not walked, by whom it was said and when: neither done nor overdue by anybody's fault.
 *
 * @param text what else was said; may be empty unless the reason is another
 */
public record Excuse(Reason reason, String text, long by, Instant at) {
    public enum Reason {
        NO_METER,
        NO_STAFF,
        /** Said in words. */
        OTHER
    }
}
