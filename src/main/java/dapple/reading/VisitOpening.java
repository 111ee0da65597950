package dapple.reading;

import dapple.enclosure.Enclosures;
import dapple.enclosure.PointFacts;
import dapple.site.ConflictException;
import dapple.site.NotFoundException;
import java.time.Instant;
import java.util.UUID;
import org.springframework.stereotype.Component;

/** Finds the visit that an entry belongs to, or begins it with its first entry; locked for the entry's transaction. */
@Component
class VisitOpening {
    private final VisitRepository visits;
    private final Enclosures enclosures;

    VisitOpening(VisitRepository visits, Enclosures enclosures) {
        this.visits = visits;
        this.enclosures = enclosures;
    }

    /**
     * The visit of an entry.
     *
     * @param at when the entry was made; the first begins the visit
     * @throws ConflictException if the visit's key belongs to somebody else's visit, or to one elsewhere
     */
    Visit at(Visitor visitor, UUID visitKey, long enclosureId, Instant at) {
        Visit visit = visits.lockByKey(visitKey)
                .orElseGet(() -> visits.saveAndFlush(new Visit(visitor, visitKey, enclosureId, at)));
        if (!visit.is(visitor, enclosureId)) {
            throw new ConflictException("the key belongs to another visit");
        }
        return visit;
    }

    /** The point of an entry; not found unless it is in the entry's enclosure. */
    PointFacts point(Visitor visitor, VisitPlace place) {
        PointFacts point = enclosures.point(visitor.siteId(), place.pointId());
        if (point.enclosureId() != place.enclosureId()) {
            throw new NotFoundException();
        }
        return point;
    }
}
