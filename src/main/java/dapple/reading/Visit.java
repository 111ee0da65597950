package dapple.reading;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** One person at one enclosure at one time. */
@Entity
class Visit {
    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private long id;

    private long siteId;
    private long enclosureId;
    private long personId;
    private UUID entryKey;
    private Instant begunAt;

    /** Whom a sheet names, where it is nobody known here. */
    private @Nullable String takenBy;

    /** Whether a sheet knew the day alone: then it is begun at noon. */
    private boolean dayOnly;

    @SuppressWarnings("NullAway.Init")
    protected Visit() {}

    Visit(Visitor visitor, UUID entryKey, long enclosureId, Instant begunAt) {
        this.siteId = visitor.siteId();
        this.enclosureId = enclosureId;
        this.personId = visitor.personId();
        this.entryKey = entryKey;
        this.begunAt = begunAt;
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

    long personId() {
        return personId;
    }

    UUID entryKey() {
        return entryKey;
    }

    VisitFacts facts() {
        return new VisitFacts(id, entryKey, enclosureId);
    }

    /** Whether the key stands for the same person at the same place. */
    boolean is(Visitor visitor, long at) {
        return siteId == visitor.siteId() && personId == visitor.personId() && enclosureId == at;
    }
}
