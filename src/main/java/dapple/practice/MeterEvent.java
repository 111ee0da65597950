package dapple.practice;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.Immutable;

/** Something that happened to a meter. Never edited. */
@Entity
@Immutable
class MeterEvent {
    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private long id;

    private long siteId;
    private long meterId;

    @Enumerated(EnumType.STRING)
    private MeterEventKind kind;

    private Instant happenedAt;
    private String note;
    private Instant recordedAt;
    private long recordedBy;
    private UUID entryKey;

    @SuppressWarnings("NullAway.Init")
    protected MeterEvent() {}

    MeterEvent(Entered entered, MeterEventKind kind, Instant happenedAt, String note) {
        this.siteId = entered.siteId();
        this.meterId = entered.meterId();
        this.kind = kind;
        this.happenedAt = happenedAt;
        this.note = note;
        this.recordedAt = entered.at();
        this.recordedBy = entered.personId();
        this.entryKey = entered.key();
    }

    MeterEventFacts facts() {
        return new MeterEventFacts(meterId, kind, happenedAt, note, recordedBy);
    }
}
