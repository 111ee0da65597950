package dapple.round;

import dapple.people.SignedIn;
import dapple.reading.StepTaken;
import dapple.reading.StepsTaken;
import dapple.site.NotFoundException;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Where the rounds of a site stand. */
@Service
public class Rounds {
    /** A round that has ended is shown so many days more, so that what was left undone is seen. */
    private static final int SHOWN_AFTER_END_DAYS = 7;

    private final RoundStopRepository stops;
    private final RoundWalkRepository walks;
    private final StepsTaken stepsTaken;
    private final Clock clock;

    Rounds(RoundStopRepository stops, RoundWalkRepository walks, StepsTaken stepsTaken, Clock clock) {
        this.stops = stops;
        this.walks = walks;
        this.stepsTaken = stepsTaken;
        this.clock = clock;
    }

    /** All rounds of the site of who asks that go on, or ended of late; in one statement. */
    @Transactional(readOnly = true)
    public List<PlanNow> now(SignedIn me) {
        SiteDay day = day(me);
        LocalDate goingOn = day.today().minusDays(SHOWN_AFTER_END_DAYS);
        return PlanRows.each(stops.rows(me.siteId(), day.today(), day.now(), goingOn)).stream()
                .map(rows -> rows.now(day))
                .toList();
    }

    /** One round. */
    @Transactional(readOnly = true)
    public PlanNow of(SignedIn me, long planId) {
        SiteDay day = day(me);
        return rows(me, planId, day).now(day);
    }

    /**
     * One walk of a round: its stops in order with every step, and what is done of them.
     *
     * @throws NotFoundException if the site has no such round, or it is not due on that day and nothing was said of it
     */
    @Transactional(readOnly = true)
    public WalkFacts walk(SignedIn me, long planId, LocalDate dueOn) {
        SiteDay day = day(me);
        PlanRows rows = rows(me, planId, day);
        PlanFacts plan = rows.plan();
        Optional<WalkSaid> row = walks.findByPlanIdAndDueOn(planId, dueOn).map(RoundWalk::said);
        if (row.isEmpty() && !plan.days().includes(dueOn)) {
            throw new NotFoundException();
        }
        WalkSaid said = row.orElse(WalkSaid.NOTHING);
        boolean isNewest = rows.current(day).filter(dueOn::isBefore).isEmpty();
        Instant start = PlanRows.start(dueOn, said, day);
        Instant end = isNewest ? day.tomorrow() : end(plan, dueOn, day);
        List<Stop> stopsThen = rows.stops(new Progress.Taken(taken(me, rows, start, end)));
        WalkState state = new WalkTime(dueOn, day.today(), isNewest).state(said, stopsThen);
        return new WalkFacts(plan, dueOn, state, said, start, stopsThen);
    }

    private List<StepTaken> taken(SignedIn me, PlanRows rows, Instant start, Instant end) {
        List<Long> points = rows.rows().stream()
                .flatMap(row -> row.pointId().stream())
                .distinct()
                .toList();
        return stepsTaken.at(me.siteId(), points, start, end);
    }

    /** The next walk ends an older one's time, when its day begins or when it was begun. */
    private Instant end(PlanFacts plan, LocalDate dueOn, SiteDay day) {
        return plan.days()
                .nextAfter(dueOn)
                .map(next -> PlanRows.start(
                        next,
                        walks.findByPlanIdAndDueOn(plan.id(), next)
                                .map(RoundWalk::said)
                                .orElse(WalkSaid.NOTHING),
                        day))
                .orElse(day.tomorrow());
    }

    private PlanRows rows(SignedIn me, long planId, SiteDay day) {
        List<StepRow> rows = stops.rowsOf(me.siteId(), planId, day.today(), day.now());
        if (rows.isEmpty()) {
            throw new NotFoundException();
        }
        return new PlanRows(rows);
    }

    private SiteDay day(SignedIn me) {
        return new SiteDay(clock.instant(), me.zone());
    }
}
