package dapple.enclosure;

import dapple.site.ConflictException;
import dapple.site.NotFoundException;
import dapple.site.TakenException;
import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.data.domain.Limit;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Says when the lamps of an enclosure are off on purpose. Its times never overlap. */
@Service
class PlanningOff {
    private static final Limit SHOWN = Limit.of(50);

    /** Later than any plan, and known to both databases. */
    private static final Instant OPEN_END =
            OffsetDateTime.of(9000, 1, 1, 0, 0, 0, 0, ZoneOffset.UTC).toInstant();

    private final EnclosureRepository enclosures;
    private final PlannedOffRepository times;
    private final ApplicationEventPublisher events;
    private final Clock clock;

    PlanningOff(
            EnclosureRepository enclosures, PlannedOffRepository times, ApplicationEventPublisher events, Clock clock) {
        this.enclosures = enclosures;
        this.times = times;
        this.events = events;
        this.clock = clock;
    }

    /** The newest planned-off times of an enclosure, those called off among them. */
    @Transactional(readOnly = true)
    public List<PlannedOffRow> of(long siteId, long enclosureId) {
        Instant now = clock.instant();
        return times.newestFirst(siteId, enclosureId, SHOWN).stream()
                .map(time -> time.row(now))
                .toList();
    }

    /**
     * Enters a time.
     *
     * @throws TakenException if the lamps are planned off in a part of it already
     */
    @Transactional
    public void plan(long siteId, PlannedOffTime time, long personId) {
        lock(siteId, time.enclosureId());
        if (!times.overlapping(time.enclosureId(), time.from(), time.to().orElse(OPEN_END))
                .isEmpty()) {
            throw new TakenException("the lamps are planned off in a part of this time already");
        }
        times.saveAndFlush(new PlannedOff(siteId, time, clock.instant(), personId));
        events.publishEvent(new PlannedOffChanged(siteId, time.enclosureId(), time.from()));
    }

    /**
     * Ends a time before it would have ended; one that has not begun by then is called off.
     *
     * @throws ConflictException if it has ended already
     */
    @Transactional
    public void end(long siteId, long enclosureId, long id, Instant at) {
        lock(siteId, enclosureId);
        PlannedOff time = times.findInEnclosure(siteId, enclosureId, id).orElseThrow(NotFoundException::new);
        Instant now = clock.instant();
        if (!time.isOpenAt(now)) {
            throw new ConflictException("the planned-off time has ended already");
        }
        time.end(at, now);
        times.saveAndFlush(time);
        events.publishEvent(new PlannedOffChanged(siteId, enclosureId, at));
    }

    private void lock(long siteId, long enclosureId) {
        if (enclosures.lockAtSite(siteId, enclosureId).isEmpty()) {
            throw new NotFoundException();
        }
    }
}
