package dapple.photo;

import dapple.photo.PhotoFacts.Removal;
import dapple.reading.VisitFacts;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A photo of a visit. One that was removed stays on record, without its pictures. */
@Entity
@Table(name = "visit_photo")
class Photo {
    /** When it was taken, and when it was stored. */
    record Times(Instant takenAt, Instant recordedAt) {}

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private long id;

    private long siteId;
    private long visitId;
    private long enclosureId;
    private UUID entryKey;
    private int widthPixels;
    private int heightPixels;
    private Instant takenAt;
    private Instant recordedAt;
    private long recordedBy;
    private @Nullable Instant removedAt;
    private @Nullable Long removedBy;
    private @Nullable String removedBecause;

    @SuppressWarnings("NullAway.Init")
    protected Photo() {}

    Photo(NewPhoto added, VisitFacts visit, Prepared prepared, Times times) {
        this.siteId = added.visitor().siteId();
        this.visitId = visit.id();
        this.enclosureId = visit.enclosureId();
        this.entryKey = added.key();
        this.widthPixels = prepared.widthPixels();
        this.heightPixels = prepared.heightPixels();
        this.takenAt = times.takenAt();
        this.recordedAt = times.recordedAt();
        this.recordedBy = added.visitor().personId();
    }

    long id() {
        return id;
    }

    void remove(Removal removal) {
        this.removedAt = removal.at();
        this.removedBy = removal.personId();
        this.removedBecause = removal.reason();
    }

    PhotoFacts facts() {
        return new PhotoFacts(id, visitId, enclosureId, widthPixels, heightPixels, takenAt, recordedBy, removal());
    }

    private Optional<Removal> removal() {
        return removedAt == null || removedBy == null || removedBecause == null
                ? Optional.empty()
                : Optional.of(new Removal(removedAt, removedBy, removedBecause));
    }
}
