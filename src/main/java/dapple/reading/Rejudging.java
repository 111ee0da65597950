package dapple.reading;

import java.time.Clock;
import java.time.Instant;
import java.util.Set;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * Has readings judged anew when a fact comes late: a calibration, a stay, a planned-off time, a change of a rig, a vet's
 * order, a first target for readings before it. What was read stays as it is, and what people were told stays on record:
 * verdicts are replaced, never changed.
 * The wish is stored in the transaction of the fact; the judging follows its commit.
 */
@Service
public class Rejudging {
    private final RejudgingDueRepository dues;
    private final RejudgingQueue queue;
    private final ApplicationEventPublisher events;
    private final Clock clock;

    Rejudging(RejudgingDueRepository dues, RejudgingQueue queue, ApplicationEventPublisher events, Clock clock) {
        this.dues = dues;
        this.queue = queue;
        this.events = events;
        this.clock = clock;
    }

    /** All visits of an enclosure with a reading taken at or after an instant. */
    @Transactional
    public void enclosure(long siteId, long enclosureId, Instant since) {
        ask(RejudgingDue.ofEnclosure(siteId, enclosureId, since, clock.instant()));
    }

    /** All visits in which a meter was read at or after an instant. */
    @Transactional
    public void meter(long siteId, long meterId, Instant since) {
        ask(RejudgingDue.ofMeter(siteId, meterId, since, clock.instant()));
    }

    /** All visits of enclosures in which a species lives or lived, with a reading taken at or after an instant. */
    @Transactional
    public void species(long siteId, long speciesId, Instant since) {
        ask(RejudgingDue.ofSpecies(siteId, speciesId, since, clock.instant()));
    }

    /** The enclosures whose visits are being judged anew. */
    public Set<Long> underWay(long siteId) {
        return queue.enclosures(siteId);
    }

    /** Whether anything of a site is being judged anew. */
    public boolean isUnderWay(long siteId) {
        return queue.isUnderWay(siteId);
    }

    private void ask(RejudgingDue due) {
        events.publishEvent(new RejudgingAsked(dues.saveAndFlush(due).id()));
    }
}
