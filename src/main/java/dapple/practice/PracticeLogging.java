package dapple.practice;

import dapple.meter.MeterDetails;
import dapple.meter.MeterRegister;
import dapple.meter.Withdrawal;
import dapple.site.ConflictException;
import dapple.site.NotFoundException;
import dapple.site.TakenException;
import java.time.Instant;
import java.util.Optional;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Writes down what happens to meters and how they are checked; what was sent before is not stored again. */
@Service
public class PracticeLogging {
    private final MeterRegister meters;
    private final MeterEventRepository events;
    private final MeterCheckRepository checks;
    private final ReferenceLampRepository lamps;

    PracticeLogging(
            MeterRegister meters,
            MeterEventRepository events,
            MeterCheckRepository checks,
            ReferenceLampRepository lamps) {
        this.meters = meters;
        this.events = events;
        this.checks = checks;
        this.lamps = lamps;
    }

    @Transactional
    public void happened(Entered entered, MeterEventKind kind, Instant at, String note) {
        meters.get(entered.siteId(), entered.meterId());
        if (!events.existsByEntryKey(entered.key())) {
            store(() -> events.saveAndFlush(new MeterEvent(entered, kind, at, note)));
        }
    }

    /**
     * Withdraws a wrong event: it stays on record, and nothing follows from it any more.
     *
     * @throws ConflictException if it is withdrawn already
     */
    @Transactional
    public void withdraw(long siteId, MeterEventFacts event, Withdrawal withdrawal) {
        MeterEvent wrong =
                events.findOfMeter(siteId, event.meterId(), event.id()).orElseThrow(NotFoundException::new);
        if (events.withdraw(wrong.id(), withdrawal.at(), withdrawal.personId(), withdrawal.reason()) == 0) {
            throw new ConflictException("the event is withdrawn already");
        }
    }

    /** Whether the covered sensor shows nothing. */
    @Transactional
    public void checkDarkZero(Entered entered, Shown shown) {
        MeterDetails meter = meters.get(entered.siteId(), entered.meterId());
        if (meter.facts().quantity().isTemperature()) {
            throw new NotFoundException();
        }
        Tolerance within =
                Tolerance.ofDarkZero(meter.facts().quantity(), meter.state().resolution());
        if (!checks.existsByEntryKey(entered.key())) {
            store(() -> checks.saveAndFlush(new MeterCheck(entered, Optional.empty(), within, shown)));
        }
    }

    /** Whether the meter shows its reference lamp as at first. */
    @Transactional
    public void checkByLamp(Entered entered, Shown shown) {
        ReferenceLampFacts lamp = lamps.inUse(entered.siteId(), entered.meterId())
                .map(ReferenceLamp::facts)
                .orElseThrow(NotFoundException::new);
        Tolerance within = Tolerance.ofLamp(lamp.firstAmount());
        if (!checks.existsByEntryKey(entered.key())) {
            store(() -> checks.saveAndFlush(new MeterCheck(entered, Optional.of(lamp.id()), within, shown)));
        }
    }

    /**
     * Names the lamp that a meter is checked by from now on, in place of another.
     *
     * @throws TakenException if somebody names another one in the same moment
     */
    @Transactional
    public void nameLamp(Entered entered, NewReferenceLamp named) {
        meters.get(entered.siteId(), entered.meterId());
        if (lamps.existsByEntryKey(entered.key())) {
            return;
        }
        lamps.inUse(entered.siteId(), entered.meterId()).ifPresent(before -> {
            before.end(named.firstAt());
            lamps.saveAndFlush(before);
        });
        store(() -> lamps.saveAndFlush(new ReferenceLamp(entered, named)));
    }

    private static void store(Runnable storing) {
        try {
            storing.run();
        } catch (DataIntegrityViolationException taken) {
            throw new TakenException("this was stored by somebody else in the same moment");
        }
    }
}
