package dapple.round;

import dapple.people.SignedIn;
import java.time.Clock;
import java.time.LocalDate;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** How many of the walks that were due have been done. */
@Service
class Coverages {
    private static final int WEEKS = 8;

    private final WalkLogs logs;
    private final Clock clock;

    Coverages(WalkLogs logs, Clock clock) {
        this.logs = logs;
        this.clock = clock;
    }

    /** The walks of the last eight weeks; what is not read any more, or was not yet, is left out. */
    @Transactional(readOnly = true)
    public Coverage of(SignedIn me, long planId) {
        SiteDay day = new SiteDay(clock.instant(), me.zone());
        LocalDate from = day.today().minusWeeks(WEEKS);
        WalkLog log = logs.since(me, planId, day, from);
        return new Coverage(log.rows().plan().days().between(from, day.today()).stream()
                .map(log::walk)
                .toList());
    }
}
