package dapple.reading;

import dapple.reading.Reading.Recorded;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import java.time.Instant;
import org.hibernate.annotations.Immutable;

/** A reading that should never have been stored, and why; none stands in its place. */
@Entity
@Immutable
class ReadingWithdrawal {
    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private long id;

    private long siteId;
    private long readingId;
    private String reason;
    private Instant recordedAt;
    private long recordedBy;

    @SuppressWarnings("NullAway.Init")
    protected ReadingWithdrawal() {}

    ReadingWithdrawal(Reading withdrawn, String reason, Recorded recorded) {
        this.siteId = withdrawn.siteId();
        this.readingId = withdrawn.id();
        this.reason = reason;
        this.recordedAt = recorded.at();
        this.recordedBy = recorded.by();
    }

    long recordedBy() {
        return recordedBy;
    }
}
