package dapple.copying;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import java.time.Instant;
import java.util.UUID;

/** That an enclosure was built like another. Never edited. */
@Entity
class EnclosureCopy {
    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private long id;

    private long siteId;
    private long originalId;
    private long enclosureId;
    private UUID entryKey;

    @Enumerated(EnumType.STRING)
    private LampsOfCopies lamps;

    private Instant copiedAt;
    private long copiedBy;

    @SuppressWarnings("NullAway.Init")
    protected EnclosureCopy() {}

    EnclosureCopy(CopyEntry entry, LampsOfCopies lamps, long enclosureId, Instant copiedAt) {
        this.siteId = entry.siteId();
        this.originalId = entry.originalId();
        this.enclosureId = enclosureId;
        this.entryKey = entry.key();
        this.lamps = lamps;
        this.copiedAt = copiedAt;
        this.copiedBy = entry.personId();
    }

    long originalId() {
        return originalId;
    }

    long enclosureId() {
        return enclosureId;
    }

    LampsOfCopies lamps() {
        return lamps;
    }

    Instant copiedAt() {
        return copiedAt;
    }
}
