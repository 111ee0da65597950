package dapple.review;

import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** An alarm that nobody had seen at an instant, and who has seen it since. */
public record AlarmOnRecord(
        long readingId, String point, String place, Instant raisedAt, Optional<Instant> seenAt, Optional<Long> seenBy) {
    /** Of the columns in the order in which the query names them. */
    AlarmOnRecord(
            long readingId,
            String point,
            String place,
            Instant raisedAt,
            @Nullable Instant seenAt,
            @Nullable Long seenBy) {
        this(readingId, point, place, raisedAt, Optional.ofNullable(seenAt), Optional.ofNullable(seenBy));
    }
}
