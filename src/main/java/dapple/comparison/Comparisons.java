package dapple.comparison;

import dapple.enclosure.Enclosures;
import dapple.meter.Meters;
import dapple.reading.ReadingLogged;
import dapple.site.ConflictException;
import dapple.site.NotFoundException;
import dapple.site.TakenException;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.springframework.context.event.EventListener;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.data.domain.Limit;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Comparisons of meters: begun by somebody, ended by their last reading or by somebody with a reason. */
@Service
public class Comparisons {
    /** Ten years of one quantity each quarter. */
    private static final Limit SHOWN = Limit.of(40);

    private final ComparisonRepository comparisons;
    private final MeterReads reads;
    private final Meters meters;
    private final Enclosures enclosures;
    private final Clock clock;

    Comparisons(ComparisonRepository comparisons, MeterReads reads, Meters meters, Enclosures enclosures, Clock clock) {
        this.comparisons = comparisons;
        this.reads = reads;
        this.meters = meters;
        this.enclosures = enclosures;
        this.clock = clock;
    }

    /**
     * Begins a comparison; sent twice, it is begun once.
     *
     * @return its id
     * @throws NotFoundException if a meter is not in use at the site for this quantity, or a point not of the site
     * @throws TakenException if meters of this quantity are being compared already
     */
    @Transactional
    public long begin(NewComparison begun) {
        Optional<Comparison> before = comparisons.findByEntryKey(begun.key());
        if (before.isPresent()) {
            return before.filter(stored -> stored.facts().siteId() == begun.siteId())
                    .orElseThrow(NotFoundException::new)
                    .id();
        }
        check(begun);
        try {
            return comparisons
                    .saveAndFlush(new Comparison(begun, clock.instant()))
                    .id();
        } catch (DataIntegrityViolationException taken) {
            throw new TakenException("meters of this quantity are being compared already");
        }
    }

    private void check(NewComparison begun) {
        List<Long> fitting = meters.inUse(begun.siteId()).stream()
                .filter(meter -> meter.quantity() == begun.quantity())
                .map(meter -> meter.id())
                .toList();
        if (!fitting.containsAll(begun.meterIds())
                || !enclosures.pointsById(begun.siteId()).keySet().containsAll(begun.pointIds())) {
            throw new NotFoundException();
        }
    }

    /**
     * Ends a comparison that goes no further: it gives no newest date, so that the next stays due.
     *
     * @throws ConflictException if it has ended already
     */
    @Transactional
    public void end(long siteId, long comparisonId, ComparisonFacts.Broken broken) {
        Comparison running = comparisons.lockAtSite(siteId, comparisonId).orElseThrow(NotFoundException::new);
        if (!running.isUnderWay()) {
            throw new ConflictException("the comparison has ended already");
        }
        running.end(broken);
        comparisons.saveAndFlush(running);
    }

    /** In the transaction that stores a reading: the last one ends the comparison. */
    @EventListener
    @Transactional
    public void complete(ReadingLogged logged) {
        comparisons.lockUnderWayAt(logged.pointId()).forEach(this::completeIfAllIsRead);
    }

    private void completeIfAllIsRead(Comparison running) {
        ComparisonFacts facts = running.facts();
        if (Progress.of(facts, reads.of(facts)).isComplete()) {
            running.complete(clock.instant());
            comparisons.saveAndFlush(running);
        }
    }

    @Transactional(readOnly = true)
    public ComparisonFacts get(long siteId, long comparisonId) {
        return comparisons
                .findAtSite(siteId, comparisonId)
                .map(Comparison::facts)
                .orElseThrow(NotFoundException::new);
    }

    /** Newest first. */
    @Transactional(readOnly = true)
    public List<ComparisonFacts> all(long siteId) {
        return comparisons.newestFirst(siteId, SHOWN).stream()
                .map(Comparison::facts)
                .toList();
    }
}
