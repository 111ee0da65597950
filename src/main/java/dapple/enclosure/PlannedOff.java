package dapple.enclosure;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A time in which the lamps of an enclosure are off on purpose: [from, to). */
@Entity
class PlannedOff {
    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private long id;

    private long siteId;
    private long enclosureId;
    private Instant fromAt;
    private @Nullable Instant toAt;
    private String reason;
    private Instant recordedAt;
    private long recordedBy;
    private @Nullable Instant calledOffAt;

    @SuppressWarnings("NullAway.Init")
    protected PlannedOff() {}

    PlannedOff(long siteId, PlannedOffTime time, Instant recordedAt, long recordedBy) {
        this.siteId = siteId;
        this.enclosureId = time.enclosureId();
        this.fromAt = time.from();
        this.toAt = time.to().orElse(null);
        this.reason = time.reason();
        this.recordedAt = recordedAt;
        this.recordedBy = recordedBy;
    }

    long enclosureId() {
        return enclosureId;
    }

    /** Ends it where it has begun by then, calls it off where it has not. */
    void end(Instant at, Instant now) {
        if (at.isAfter(fromAt)) {
            this.toAt = at;
        } else {
            this.calledOffAt = now;
        }
    }

    /** Whether it may still be ended earlier than it says. */
    boolean isOpenAt(Instant now) {
        return calledOffAt == null && (toAt == null || toAt.isAfter(now));
    }

    PlannedOffTime time() {
        return new PlannedOffTime(enclosureId, fromAt, Optional.ofNullable(toAt), reason);
    }

    PlannedOffOnRecord onRecord() {
        return new PlannedOffOnRecord(time(), recordedAt, recordedBy, Optional.ofNullable(calledOffAt));
    }

    PlannedOffRow row(Instant now) {
        return new PlannedOffRow(id, time(), calledOffAt != null, isOpenAt(now), recordedAt, recordedBy);
    }
}
