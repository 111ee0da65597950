package dapple.reading;

import dapple.light.judging.State;
import dapple.light.quantity.Quantity;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** The newest reading of one quantity at one point, with the gravest verdict on it. */
@Entity
class LatestReading {
    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private long id;

    private long siteId;
    private long enclosureId;
    private long pointId;

    @Enumerated(EnumType.STRING)
    private Quantity quantity;

    private long readingId;
    private long verdictId;

    @Enumerated(EnumType.STRING)
    private @Nullable State state;

    private Instant takenAt;
    private Instant stateSince;

    @Version
    private long version;

    @SuppressWarnings("NullAway.Init")
    protected LatestReading() {}

    LatestReading(long siteId, JudgedReading newest, Instant since) {
        this.siteId = siteId;
        this.enclosureId = newest.enclosureId();
        this.pointId = newest.pointId();
        this.quantity = newest.quantity();
        this.takenAt = newest.takenAt();
        this.stateSince = since;
        become(newest, since);
    }

    void become(JudgedReading newest, Instant since) {
        this.readingId = newest.readingId();
        this.verdictId = newest.verdictId();
        this.state = newest.state().orElse(null);
        this.takenAt = newest.takenAt();
        this.stateSince = since;
    }
}
