package dapple.reading;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import java.time.Instant;
import java.util.UUID;

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

    @SuppressWarnings("NullAway.Init")
    protected Visit() {}

    Visit(Visitor visitor, VisitPlace place, Instant begunAt) {
        this.siteId = visitor.siteId();
        this.enclosureId = place.enclosureId();
        this.personId = visitor.personId();
        this.entryKey = place.visitKey();
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

    UUID entryKey() {
        return entryKey;
    }

    /** Whether the key stands for the same person at the same place. */
    boolean is(Visitor visitor, VisitPlace place) {
        return siteId == visitor.siteId() && personId == visitor.personId() && enclosureId == place.enclosureId();
    }
}
