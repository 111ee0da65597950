package dapple.round;

import dapple.people.SignedIn;
import dapple.site.NotFoundException;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Where the rounds of a site stand. */
@Service
public class Rounds {
    /** A round that has ended is shown so many days more, so that what was left undone is seen. */
    private static final int SHOWN_AFTER_END_DAYS = 7;

    private final RoundStopRepository stops;
    private final WalkLogs logs;
    private final Clock clock;

    Rounds(RoundStopRepository stops, WalkLogs logs, Clock clock) {
        this.stops = stops;
        this.logs = logs;
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
        return logs.rows(me.siteId(), planId, day).now(day);
    }

    /**
     * One walk of a round: its stops in order with every step, and what is done of them.
     *
     * @throws NotFoundException if the site has no such round, or it is not due on that day and nothing was said of it
     */
    @Transactional(readOnly = true)
    public WalkFacts walk(SignedIn me, long planId, LocalDate dueOn) {
        WalkLog log = logs.of(me.siteId(), planId, day(me), dueOn);
        if (!log.has(dueOn)) {
            throw new NotFoundException();
        }
        return log.walk(dueOn);
    }

    private SiteDay day(SignedIn me) {
        return new SiteDay(clock.instant(), me.zone());
    }
}
