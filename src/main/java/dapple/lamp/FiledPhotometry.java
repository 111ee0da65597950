package dapple.lamp;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;

/** A photometric file as it was filed. Never edited: a model takes a later one in its place. */
@Entity
@Table(name = "lamp_photometry")
class FiledPhotometry {
    static final int MOST_CHARACTERS = 1_000_000;

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private long id;

    private long siteId;
    private String source;

    @Column(length = MOST_CHARACTERS)
    private String content;

    private Instant recordedAt;
    private long recordedBy;

    @SuppressWarnings("NullAway.Init")
    protected FiledPhotometry() {}

    FiledPhotometry(long siteId, NewPhotometry added, Instant recordedAt) {
        this.siteId = siteId;
        this.source = added.source();
        this.content = added.content();
        this.recordedAt = recordedAt;
        this.recordedBy = added.personId();
    }

    long id() {
        return id;
    }
}
