package dapple.round;

import dapple.people.SignedIn;
import dapple.site.SiteFacts;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Consumer;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** How many of the walks that were due have been done. */
@Service
public class Coverages {
    private static final int WEEKS = 8;

    private final RoundPlanRepository plans;
    private final WalkLogs logs;
    private final Clock clock;

    Coverages(RoundPlanRepository plans, WalkLogs logs, Clock clock) {
        this.plans = plans;
        this.logs = logs;
        this.clock = clock;
    }

    /** The walks of the last eight weeks; what is not read any more, or was not yet, is left out. */
    @Transactional(readOnly = true)
    Coverage of(SignedIn me, long planId) {
        SiteDay day = new SiteDay(clock.instant(), me.zone());
        LocalDate from = day.today().minusWeeks(WEEKS);
        WalkLog log = logs.since(me.siteId(), planId, day, from);
        return new Coverage(log.rows().plan().days().between(from, day.today()).stream()
                .map(log::walk)
                .toList());
    }

    /** All walks of a site that were due from one day to another, round by round, oldest first; a month at a time. */
    @Transactional(readOnly = true)
    public void between(SiteFacts site, LocalDate from, LocalDate to, Consumer<WalkFacts> walk) {
        SiteDay day = new SiteDay(clock.instant(), site.timeZone());
        LocalDate last = to.isAfter(day.today()) ? day.today() : to;
        for (RoundPlan plan : plans.all(site.id())) {
            for (LocalDate begin = from; !begin.isAfter(last); begin = begin.plusMonths(1)) {
                LocalDate end = begin.plusMonths(1).minusDays(1);
                walks(site.id(), plan, day, begin, end.isAfter(last) ? last : end)
                        .forEach(walk);
            }
        }
    }

    private List<WalkFacts> walks(long siteId, RoundPlan plan, SiteDay day, LocalDate from, LocalDate to) {
        List<LocalDate> due = plan.facts().days().between(from, to);
        if (due.isEmpty()) {
            return List.of();
        }
        WalkLog log = logs.between(siteId, plan.facts().id(), day, from, to);
        return due.stream().sorted().map(log::walk).toList();
    }
}
