package dapple.review;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** A reading over the ceiling that interrupts everybody at the site until somebody has seen it. */
@Entity
class Alarm {
    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private long id;

    private long siteId;
    private long enclosureId;
    private long pointId;
    private long readingId;
    private Instant raisedAt;
    private @Nullable Instant seenAt;
    private @Nullable Long seenBy;

    @SuppressWarnings("NullAway.Init")
    protected Alarm() {}

    Alarm(long siteId, long enclosureId, long pointId, long readingId, Instant raisedAt) {
        this.siteId = siteId;
        this.enclosureId = enclosureId;
        this.pointId = pointId;
        this.readingId = readingId;
        this.raisedAt = raisedAt;
    }

    long enclosureId() {
        return enclosureId;
    }

    /** Keeps the first who saw it. */
    void see(long personId, Instant at) {
        if (seenAt == null) {
            this.seenAt = at;
            this.seenBy = personId;
        }
    }
}
