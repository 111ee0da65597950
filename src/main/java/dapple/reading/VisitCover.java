package dapple.reading;

import dapple.reading.Reading.Recorded;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;

/** How the cover was at a visit. Never edited: what is said later counts. */
@Entity
@Immutable
class VisitCover {
    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private long id;

    private long siteId;
    private long visitId;

    @Enumerated(EnumType.STRING)
    private CoverSaid cover;

    private @Nullable UUID entryKey;
    private Instant recordedAt;
    private long recordedBy;

    @SuppressWarnings("NullAway.Init")
    protected VisitCover() {}

    VisitCover(Visit visit, CoverSaid cover, Optional<UUID> entryKey, Recorded recorded) {
        this.siteId = visit.siteId();
        this.visitId = visit.id();
        this.cover = cover;
        this.entryKey = entryKey.orElse(null);
        this.recordedAt = recorded.at();
        this.recordedBy = recorded.by();
    }

    VisitCoverFacts facts() {
        return new VisitCoverFacts(cover, recordedAt, recordedBy);
    }
}
