package dapple.animal;

import java.time.Instant;

/** How and when a record was closed. */
public record RecordEnd(Happening how, Instant at) {
    /** Who has joined another record or was split up lives on under other numbers. */
    public boolean canReturn() {
        return how != Happening.JOINED && how != Happening.SPLIT_OFF;
    }
}
