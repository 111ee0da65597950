package dapple.reading;

import dapple.reading.Reading.Recorded;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.Immutable;

/** What somebody saw on a visit besides the numbers. Never edited. */
@Entity
@Immutable
class VisitNote {
    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private long id;

    private long siteId;
    private long visitId;
    private String note;
    private UUID entryKey;
    private Instant notedAt;
    private Instant recordedAt;
    private long recordedBy;

    @SuppressWarnings("NullAway.Init")
    protected VisitNote() {}

    VisitNote(Visit visit, UUID entryKey, String note, Instant notedAt, Recorded recorded) {
        this.siteId = visit.siteId();
        this.visitId = visit.id();
        this.note = note;
        this.entryKey = entryKey;
        this.notedAt = notedAt;
        this.recordedAt = recorded.at();
        this.recordedBy = recorded.by();
    }

    VisitNoteFacts facts() {
        return new VisitNoteFacts(note, notedAt, recordedBy);
    }
}
