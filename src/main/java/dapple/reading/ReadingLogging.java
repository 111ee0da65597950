package dapple.reading;

import dapple.enclosure.Enclosures;
import dapple.enclosure.PointFacts;
import dapple.meter.MeterFacts;
import dapple.meter.Meters;
import dapple.reading.Reading.Recorded;
import dapple.site.ConflictException;
import dapple.site.NotFoundException;
import java.time.Clock;
import java.util.function.Supplier;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.dao.ConcurrencyFailureException;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Stores readings, each in a transaction of its own together with its verdict and the table of newest readings. An
 * entry that was sent before is found again by its key, never stored twice.
 */
@Service
public class ReadingLogging {
    /** A conflict with another writer is over when the other has committed: two more tries are plenty. */
    private static final int TRIES = 3;

    private final VisitRepository visits;
    private final ReadingRepository readings;
    private final UnreadPointRepository unreadPoints;
    private final Judging judging;
    private final LatestReadings latest;
    private final Enclosures enclosures;
    private final Meters meters;
    private final ApplicationEventPublisher events;
    private final Clock clock;
    private final TransactionTemplate transaction;

    ReadingLogging(
            VisitRepository visits,
            ReadingRepository readings,
            UnreadPointRepository unreadPoints,
            Judging judging,
            LatestReadings latest,
            Enclosures enclosures,
            Meters meters,
            ApplicationEventPublisher events,
            Clock clock,
            PlatformTransactionManager transactions) {
        this.visits = visits;
        this.readings = readings;
        this.unreadPoints = unreadPoints;
        this.judging = judging;
        this.latest = latest;
        this.enclosures = enclosures;
        this.meters = meters;
        this.events = events;
        this.clock = clock;
        this.transaction = new TransactionTemplate(transactions);
    }

    /**
     * Stores a reading, or finds the one that the same entry has stored before.
     *
     * @return the reading's id
     * @throws NotFoundException if the point or the meter is not of this site, or the point not of this enclosure
     * @throws ConflictException if the key or the visit's key belongs to somebody else's entry
     */
    public long log(Visitor visitor, Entry entry) {
        return patiently(() -> readings.findByKey(entry.key())
                .map(stored -> sameEntry(stored, visitor, entry))
                .orElseGet(() -> store(visitor, entry)));
    }

    /**
     * Stores a corrected amount in place of a mistyped one, at the time and point of the first.
     *
     * @return the new reading's id
     * @throws ConflictException if the reading has been corrected already
     */
    public long correct(Visitor visitor, long readingId, Correction correction) {
        try {
            return patiently(() -> readings.findByKey(correction.key())
                    .map(Reading::id)
                    .orElseGet(() -> storeCorrection(visitor, readingId, correction)));
        } catch (DataIntegrityViolationException correctedMeanwhile) {
            throw new ConflictException("the reading has been corrected already");
        }
    }

    /** Notes why a point was not read. */
    public void note(Visitor visitor, Unread unread) {
        patiently(() -> {
            if (unreadPoints.findByEntryKey(unread.key()).isEmpty()) {
                Visit visit = visit(visitor, unread.place());
                point(visitor, unread.place());
                unreadPoints.saveAndFlush(new UnreadPoint(visit, unread, clock.instant()));
            }
            return unread.place().pointId();
        });
    }

    private long sameEntry(Reading stored, Visitor visitor, Entry entry) {
        if (!stored.visit().is(visitor, entry.place())) {
            throw new ConflictException("the key belongs to another entry");
        }
        return stored.id();
    }

    private long store(Visitor visitor, Entry entry) {
        PointFacts point = point(visitor, entry.place());
        MeterFacts meter = meters.get(visitor.siteId(), entry.meterId());
        Visit visit = visit(visitor, entry.place());
        Recorded recorded = new Recorded(clock.instant(), visitor.personId());
        return judged(readings.saveAndFlush(new Reading(visit, entry, meter.quantity(), point.facing(), recorded)));
    }

    private long storeCorrection(Visitor visitor, long readingId, Correction correction) {
        Reading mistyped = readings.findAtSite(visitor.siteId(), readingId).orElseThrow(NotFoundException::new);
        visits.lockByKey(mistyped.visit().entryKey());
        Recorded recorded = new Recorded(clock.instant(), visitor.personId());
        return judged(readings.saveAndFlush(mistyped.correctedBy(correction, recorded)));
    }

    private long judged(Reading reading) {
        judging.judge(reading.visit()).forEach(one -> latest.refresh(reading.siteId(), one.pointId(), one.quantity()));
        events.publishEvent(new ReadingLogged(reading.id(), reading.pointId()));
        return reading.id();
    }

    private Visit visit(Visitor visitor, VisitPlace place) {
        Visit visit = visits.lockByKey(place.visitKey())
                .orElseGet(() -> visits.saveAndFlush(new Visit(visitor, place, clock.instant())));
        if (!visit.is(visitor, place)) {
            throw new ConflictException("the key belongs to another visit");
        }
        return visit;
    }

    private PointFacts point(Visitor visitor, VisitPlace place) {
        PointFacts point = enclosures.point(visitor.siteId(), place.pointId());
        if (point.enclosureId() != place.enclosureId()) {
            throw new NotFoundException();
        }
        return point;
    }

    /** In a transaction of its own, again when another writer was quicker. */
    private long patiently(Supplier<Long> work) {
        for (int attempt = 1; ; attempt++) {
            try {
                Long id = transaction.execute(status -> work.get());
                return id == null ? 0 : id;
            } catch (DataIntegrityViolationException | ConcurrencyFailureException otherWriter) {
                if (attempt == TRIES) {
                    throw otherWriter;
                }
            }
        }
    }
}
