package dapple.reading;

import dapple.enclosure.PointFacts;
import dapple.meter.MeterFacts;
import dapple.meter.Meters;
import dapple.reading.Reading.Recorded;
import dapple.site.ConflictException;
import dapple.site.NotFoundException;
import java.time.Clock;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.stereotype.Service;

/**
 * Stores readings, each in a transaction of its own together with its verdict and the table of newest readings. An
 * entry that was sent before is found again by its key, never stored twice.
 */
@Service
public class ReadingLogging {
    private final VisitRepository visits;
    private final ReadingRepository readings;
    private final ReadingWithdrawalRepository withdrawals;
    private final UnreadPointRepository unreadPoints;
    private final RepeatsOnRecord repeats;
    private final VisitOpening opening;
    private final Verdicts verdicts;
    private final Meters meters;
    private final ApplicationEventPublisher events;
    private final Clock clock;
    private final Patiently patiently;

    ReadingLogging(
            VisitRepository visits,
            ReadingRepository readings,
            ReadingWithdrawalRepository withdrawals,
            UnreadPointRepository unreadPoints,
            RepeatsOnRecord repeats,
            VisitOpening opening,
            Verdicts verdicts,
            Meters meters,
            ApplicationEventPublisher events,
            Clock clock,
            Patiently patiently) {
        this.visits = visits;
        this.readings = readings;
        this.withdrawals = withdrawals;
        this.unreadPoints = unreadPoints;
        this.repeats = repeats;
        this.opening = opening;
        this.verdicts = verdicts;
        this.meters = meters;
        this.events = events;
        this.clock = clock;
        this.patiently = patiently;
    }

    /**
     * Stores a reading, or finds the one that the same entry has stored before.
     *
     * @return the reading's id
     * @throws NotFoundException if the point or the meter is not of this site, or the point not of this enclosure
     * @throws ConflictException if the key or the visit's key belongs to somebody else's entry
     */
    public long log(Visitor visitor, Entry entry) {
        return patiently.run(() -> readings.findByKey(entry.key())
                .map(stored -> sameEntry(stored, visitor, entry))
                .orElseGet(() -> store(visitor, entry)));
    }

    /**
     * Stores a corrected amount in place of a mistyped one, at the time and point of the first.
     *
     * @return the new reading's id
     * @throws ConflictException if somebody else took it and the visitor does not supervise, or if it has been corrected
     *     or withdrawn already
     */
    public long correct(Visitor visitor, long readingId, Correction correction) {
        try {
            return patiently.run(() -> readings.findByKey(correction.key())
                    .map(stored -> sameCorrection(stored, visitor, readingId))
                    .orElseGet(() -> storeCorrection(visitor, readingId, correction)));
        } catch (DataIntegrityViolationException correctedMeanwhile) {
            throw new ConflictException("the reading has been corrected already");
        }
    }

    /** Notes why a point, or one quantity at it, was not read. */
    public void note(Visitor visitor, Unread unread) {
        patiently.run(() -> {
            if (unreadPoints.findByEntryKey(unread.key()).isEmpty()) {
                VisitPlace place = unread.place();
                Visit visit = opening.at(visitor, place.visitKey(), place.enclosureId(), unread.notedAt());
                opening.point(visitor, place);
                unreadPoints.saveAndFlush(new UnreadPoint(visit, unread));
            }
            return unread.place().pointId();
        });
    }

    private static long sameEntry(Reading stored, Visitor visitor, Entry entry) {
        if (!stored.visit().is(visitor, entry.place().enclosureId())) {
            throw new ConflictException("the key belongs to another entry");
        }
        return stored.id();
    }

    private static long sameCorrection(Reading stored, Visitor visitor, long readingId) {
        if (stored.siteId() != visitor.siteId() || !stored.supersedes(readingId)) {
            throw new ConflictException("the key belongs to another entry");
        }
        return stored.id();
    }

    private long store(Visitor visitor, Entry entry) {
        PointFacts point = opening.point(visitor, entry.place());
        MeterFacts meter = meters.get(visitor.siteId(), entry.meterId());
        Visit visit =
                opening.at(visitor, entry.place().visitKey(), entry.place().enclosureId(), entry.takenAt());
        Recorded recorded = new Recorded(clock.instant(), visitor.personId());
        Reading reading = readings.saveAndFlush(new Reading(visit, entry, meter.quantity(), point.facing(), recorded));
        entry.repeats().ifPresent(taken -> repeats.keep(reading, taken));
        return judged(reading);
    }

    private long storeCorrection(Visitor visitor, long readingId, Correction correction) {
        Reading mistyped = readings.findAtSite(visitor.siteId(), readingId).orElseThrow(NotFoundException::new);
        mistyped.checkMayBeChangedBy(visitor);
        visits.lockByKey(mistyped.visit().entryKey());
        if (withdrawals.findByReadingId(readingId).isPresent()) {
            throw new ConflictException("the reading has been withdrawn already");
        }
        Recorded recorded = new Recorded(clock.instant(), visitor.personId());
        return judged(readings.saveAndFlush(mistyped.correctedBy(correction, recorded)));
    }

    private long judged(Reading reading) {
        verdicts.renew(reading.visit());
        events.publishEvent(new ReadingLogged(reading.id(), reading.pointId()));
        return reading.id();
    }
}
