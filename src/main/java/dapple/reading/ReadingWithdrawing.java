package dapple.reading;

import dapple.reading.Reading.Recorded;
import dapple.site.ConflictException;
import dapple.site.NotFoundException;
import java.time.Clock;
import java.util.Optional;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;

/** Withdraws readings that should never have been stored. */
@Service
public class ReadingWithdrawing {
    private final VisitRepository visits;
    private final ReadingRepository readings;
    private final ReadingWithdrawalRepository withdrawals;
    private final Verdicts verdicts;
    private final ApplicationEventPublisher events;
    private final Patiently patiently;
    private final Clock clock;

    ReadingWithdrawing(
            VisitRepository visits,
            ReadingRepository readings,
            ReadingWithdrawalRepository withdrawals,
            Verdicts verdicts,
            ApplicationEventPublisher events,
            Patiently patiently,
            Clock clock) {
        this.visits = visits;
        this.readings = readings;
        this.withdrawals = withdrawals;
        this.verdicts = verdicts;
        this.events = events;
        this.patiently = patiently;
        this.clock = clock;
    }

    /**
     * Withdraws a reading; sent twice, it is withdrawn once.
     *
     * @throws ConflictException if somebody else took it and the visitor does not supervise, or if it has been corrected,
     *     or withdrawn by somebody else
     */
    public void withdraw(Visitor visitor, long readingId, String reason) {
        patiently.run(() -> {
            Reading reading = readings.findAtSite(visitor.siteId(), readingId).orElseThrow(NotFoundException::new);
            reading.checkMayBeChangedBy(visitor);
            visits.lockByKey(reading.visit().entryKey());
            Optional<ReadingWithdrawal> before = withdrawals.findByReadingId(readingId);
            if (before.isEmpty()) {
                store(visitor, reading, reason);
            } else if (before.get().recordedBy() != visitor.personId()) {
                throw new ConflictException("the reading has been withdrawn already");
            }
            return readingId;
        });
    }

    private void store(Visitor visitor, Reading reading, String reason) {
        if (readings.isSuperseded(reading.id())) {
            throw new ConflictException("the reading has been corrected already");
        }
        Recorded recorded = new Recorded(clock.instant(), visitor.personId());
        withdrawals.saveAndFlush(new ReadingWithdrawal(reading, reason, recorded));
        verdicts.renewWithout(reading);
        events.publishEvent(new ReadingWithdrawn(reading.id(), reading.pointId()));
    }
}
