package dapple.rig;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import java.time.Instant;
import java.util.UUID;

/** An instant at which the rig of an enclosure changed. Never edited. */
@Entity
class RigChange {
    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private long id;

    private long siteId;
    private long enclosureId;
    private Instant atInstant;

    @Enumerated(EnumType.STRING)
    private RigChangeKind kind;

    private String note;
    private UUID entryKey;
    private Instant recordedAt;
    private long recordedBy;

    @SuppressWarnings("NullAway.Init")
    protected RigChange() {}

    RigChange(RigEntry entry, RigChangeKind kind, Instant recordedAt) {
        this.siteId = entry.siteId();
        this.enclosureId = entry.enclosureId();
        this.atInstant = entry.at();
        this.kind = kind;
        this.note = entry.note();
        this.entryKey = entry.key();
        this.recordedAt = recordedAt;
        this.recordedBy = entry.personId();
    }

    long id() {
        return id;
    }

    long siteId() {
        return siteId;
    }

    long enclosureId() {
        return enclosureId;
    }

    Instant at() {
        return atInstant;
    }

    Instant recordedAt() {
        return recordedAt;
    }

    RigChangeFacts facts() {
        return new RigChangeFacts(id, enclosureId, atInstant, kind, note, recordedAt, recordedBy);
    }
}
