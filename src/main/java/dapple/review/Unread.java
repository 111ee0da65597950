package dapple.review;

import java.time.Instant;

/** That a point has not been read since what is needed there changed: what was read before says nothing of it. */
public record Unread(Why why, Instant since) {
    /** What changed. */
    public enum Why {
        /** A vet's order came into force. */
        ORDER,
        /** A newer version of the target was approved. */
        TARGET,
        /** Another species moved in. */
        ARRIVAL
    }
}
