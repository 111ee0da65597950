package dapple.reading;

import dapple.enclosure.Enclosures;
import dapple.site.NotFoundException;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** The visits that later features hang things on. */
@Service
public class Visits {
    private final VisitRepository visits;
    private final VisitOpening opening;
    private final Enclosures enclosures;

    Visits(VisitRepository visits, VisitOpening opening, Enclosures enclosures) {
        this.visits = visits;
        this.opening = opening;
        this.enclosures = enclosures;
    }

    /** The visit of an entry that was made at an instant, begun by it if it is the first; held until the end of the transaction. */
    @Transactional(propagation = Propagation.MANDATORY)
    public VisitFacts open(Visitor visitor, UUID visitKey, long enclosureId, Instant at) {
        enclosures.get(visitor.siteId(), enclosureId);
        return opening.at(visitor, visitKey, enclosureId, at).facts();
    }

    /** A visit that has begun. */
    @Transactional(readOnly = true)
    public Optional<VisitFacts> find(long siteId, UUID visitKey) {
        return visits.findByKey(siteId, visitKey).map(Visit::facts);
    }

    @Transactional(readOnly = true)
    public VisitFacts get(long siteId, long visitId) {
        return visits.findAtSite(siteId, visitId).map(Visit::facts).orElseThrow(NotFoundException::new);
    }
}
