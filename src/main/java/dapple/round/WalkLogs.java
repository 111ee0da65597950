package dapple.round;

import dapple.enclosure.Enclosures;
import dapple.reading.StepsTaken;
import dapple.site.NotFoundException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;

/** Gathers what happened on the walks of a round. */
@Component
class WalkLogs {
    private final RoundStopRepository stops;
    private final RoundWalkRepository walks;
    private final StepsTaken stepsTaken;
    private final Enclosures enclosures;

    WalkLogs(RoundStopRepository stops, RoundWalkRepository walks, StepsTaken stepsTaken, Enclosures enclosures) {
        this.stops = stops;
        this.walks = walks;
        this.stepsTaken = stepsTaken;
        this.enclosures = enclosures;
    }

    PlanRows rows(long siteId, long planId, SiteDay day) {
        List<StepRow> rows = stops.rowsOf(siteId, planId, day.today(), day.now());
        if (rows.isEmpty()) {
            throw new NotFoundException();
        }
        return new PlanRows(rows);
    }

    /** Of one walk, as long as its time lasts. */
    WalkLog of(long siteId, long planId, SiteDay day, LocalDate dueOn) {
        PlanRows rows = rows(siteId, planId, day);
        LocalDate next = rows.plan().days().nextAfter(dueOn).orElse(day.today());
        return of(siteId, rows, day, new Days(dueOn, next));
    }

    /** Of all walks since a day. */
    WalkLog since(long siteId, long planId, SiteDay day, LocalDate from) {
        LocalDate next = day.today().plusDays(Cadence.Every.MOST);
        return of(siteId, rows(siteId, planId, day), day, new Days(from, next));
    }

    /** Of the walks that were due from one day to another, both included. */
    WalkLog between(long siteId, long planId, SiteDay day, LocalDate from, LocalDate to) {
        PlanRows rows = rows(siteId, planId, day);
        LocalDate next = rows.plan().days().nextAfter(to).orElse(day.today());
        return of(siteId, rows, day, new Days(from, next.isBefore(to) ? to : next));
    }

    private WalkLog of(long siteId, PlanRows rows, SiteDay day, Days days) {
        Map<LocalDate, WalkSaid> said = walks.between(rows.plan().id(), days.from(), days.to()).stream()
                .collect(Collectors.toMap(RoundWalk::dueOn, RoundWalk::said));
        Instant start = said.values().stream()
                .flatMap(one -> one.begun().stream())
                .map(Begun::at)
                .filter(day.startOf(days.from())::isAfter)
                .min(Comparator.naturalOrder())
                .orElse(day.startOf(days.from()));
        Instant end = days.to().isAfter(day.today())
                ? day.tomorrow()
                : day.startOf(days.to().plusDays(1));
        List<Long> points = rows.points();
        return new WalkLog(
                rows,
                day,
                said,
                stepsTaken.at(siteId, points, start, end),
                stepsTaken.knownBefore(siteId, points, start),
                enclosures.plannedOff(siteId, rows.enclosures(), start, end));
    }

    private record Days(LocalDate from, LocalDate to) {}
}
