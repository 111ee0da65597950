package dapple.reading;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.data.domain.Limit;
import org.springframework.stereotype.Component;

/** Judges visits anew, in batches, each visit in a transaction of its own under the visit's lock. */
@Component
class RejudgingWork {
    private static final int BATCH = 50;

    private final RejudgingDueRepository dues;
    private final VisitRepository visits;
    private final Verdicts verdicts;
    private final ApplicationEventPublisher events;
    private final Patiently patiently;
    private final Clock clock;

    RejudgingWork(
            RejudgingDueRepository dues,
            VisitRepository visits,
            Verdicts verdicts,
            ApplicationEventPublisher events,
            Patiently patiently,
            Clock clock) {
        this.dues = dues;
        this.visits = visits;
        this.verdicts = verdicts;
        this.events = events;
        this.patiently = patiently;
        this.clock = clock;
    }

    /**
     * Begins with one batch. Where it is a whole species the first are the newest readings of all its enclosures, which
     * pages show and alarms tell; they may be many years' from the oldest. Whether there may be more to do.
     */
    boolean begin(long dueId) {
        Optional<List<Long>> newest = dues.findById(dueId)
                .flatMap(due -> due.speciesId().map(species -> visits.newestOfSpecies(due.siteId(), species)));
        newest.ifPresent(visitIds -> visitIds.forEach(this::judge));
        return newest.isPresent() || goOn(dueId);
    }

    /** Goes on with one batch; done twice, it does no harm. Whether there may be more to do. */
    boolean goOn(long dueId) {
        List<Long> batch = dues.findById(dueId).map(this::next).orElse(List.of());
        batch.forEach(this::judge);
        patiently.run(() -> keep(dueId, batch));
        return batch.size() == BATCH;
    }

    private List<Long> next(RejudgingDue due) {
        Limit limit = Limit.of(BATCH);
        Function<Long, List<Long>> ofEnclosure =
                enclosure -> visits.ofEnclosureSince(due.siteId(), enclosure, due.since(), due.lastVisitId(), limit);
        Function<Long, List<Long>> ofMeter =
                meter -> visits.ofMeterSince(due.siteId(), meter, due.since(), due.lastVisitId(), limit);
        Function<Long, List<Long>> ofSpecies =
                species -> visits.ofSpeciesSince(due.siteId(), species, due.since(), due.lastVisitId(), limit);
        return due.enclosureId()
                .map(ofEnclosure)
                .or(() -> due.meterId().map(ofMeter))
                .or(() -> due.speciesId().map(ofSpecies))
                .orElse(List.of());
    }

    private void judge(long visitId) {
        patiently.run(() -> {
            visits.lockById(visitId).ifPresent(visit -> {
                verdicts.renew(visit);
                events.publishEvent(new VisitRejudged(visit.siteId(), visit.enclosureId(), visitId));
            });
            return visitId;
        });
    }

    private long keep(long dueId, List<Long> batch) {
        RejudgingDue due = dues.findById(dueId).orElseThrow();
        if (!batch.isEmpty()) {
            due.passed(batch);
        }
        if (batch.size() < BATCH) {
            due.finish(clock.instant());
        }
        return dueId;
    }
}
