package dapple.reading;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * From when on the visits of an enclosure, those in which a meter was read, or those where a species lived are to be
 * judged anew; how far that is.
 */
@Entity
@Table(name = "rejudging")
class RejudgingDue {
    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private long id;

    private long siteId;
    private @Nullable Long enclosureId;
    private @Nullable Long meterId;
    private @Nullable Long speciesId;
    private Instant sinceAt;
    private Instant askedAt;
    private long lastVisitId;
    private int visits;
    private @Nullable Instant finishedAt;

    @SuppressWarnings("NullAway.Init")
    protected RejudgingDue() {}

    private RejudgingDue(long siteId, Instant sinceAt, Instant askedAt) {
        this.siteId = siteId;
        this.sinceAt = sinceAt;
        this.askedAt = askedAt;
    }

    static RejudgingDue ofEnclosure(long siteId, long enclosureId, Instant since, Instant askedAt) {
        RejudgingDue due = new RejudgingDue(siteId, since, askedAt);
        due.enclosureId = enclosureId;
        return due;
    }

    static RejudgingDue ofMeter(long siteId, long meterId, Instant since, Instant askedAt) {
        RejudgingDue due = new RejudgingDue(siteId, since, askedAt);
        due.meterId = meterId;
        return due;
    }

    static RejudgingDue ofSpecies(long siteId, long speciesId, Instant since, Instant askedAt) {
        RejudgingDue due = new RejudgingDue(siteId, since, askedAt);
        due.speciesId = speciesId;
        return due;
    }

    long id() {
        return id;
    }

    long siteId() {
        return siteId;
    }

    Optional<Long> enclosureId() {
        return Optional.ofNullable(enclosureId);
    }

    Optional<Long> meterId() {
        return Optional.ofNullable(meterId);
    }

    Optional<Long> speciesId() {
        return Optional.ofNullable(speciesId);
    }

    Instant since() {
        return sinceAt;
    }

    long lastVisitId() {
        return lastVisitId;
    }

    /** These visits, in the order of their ids, have been judged anew. */
    void passed(List<Long> visitIds) {
        this.lastVisitId = visitIds.get(visitIds.size() - 1);
        this.visits += visitIds.size();
    }

    void finish(Instant at) {
        this.finishedAt = at;
    }
}
