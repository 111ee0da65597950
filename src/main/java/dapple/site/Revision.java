package dapple.site;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import java.time.Instant;
import java.util.Optional;
import org.hibernate.envers.RevisionEntity;
import org.hibernate.envers.RevisionNumber;
import org.hibernate.envers.RevisionTimestamp;
import org.jspecify.annotations.Nullable;

/** Who changed recorded things, and when. */
@Entity
@RevisionEntity(RevisionAuthor.class)
class Revision {
    @Id
    @RevisionNumber
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "revision_seq")
    @SequenceGenerator(name = "revision_seq", sequenceName = "revision_seq", allocationSize = 1)
    private long id;

    @RevisionTimestamp
    private long at;

    private @Nullable Long personId;

    protected Revision() {}

    long id() {
        return id;
    }

    Instant at() {
        return Instant.ofEpochMilli(at);
    }

    Optional<Long> personId() {
        return Optional.ofNullable(personId);
    }

    void by(long author) {
        this.personId = author;
    }
}
