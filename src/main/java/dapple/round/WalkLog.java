package dapple.round;

import dapple.enclosure.PlannedOffTime;
import dapple.reading.StepKnown;
import dapple.reading.StepTaken;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What happened on the walks of a round over some time.
 *
 * @param said what was said of its walks
 * @param taken what was read and noted, oldest first
 * @param known what had been read before: what was first read later does not count for an older walk
 */
record WalkLog(
        PlanRows rows,
        SiteDay day,
        Map<LocalDate, WalkSaid> said,
        List<StepTaken> taken,
        Set<StepKnown> known,
        List<PlannedOffTime> off) {

    /** Whether there is a walk of a day. */
    boolean has(LocalDate dueOn) {
        return said.containsKey(dueOn) || rows.plan().days().includes(dueOn);
    }

    WalkFacts walk(LocalDate dueOn) {
        WalkSaid then = said(dueOn);
        boolean isNewest = rows.current(day).filter(dueOn::isBefore).isEmpty();
        Instant start = PlanRows.start(dueOn, then, day);
        Instant end = isNewest ? day.tomorrow() : end(dueOn);
        List<StepTaken> inTime = taken.stream()
                .filter(one -> !one.at().isBefore(start) && one.at().isBefore(end))
                .toList();
        List<Stop> stops = (isNewest ? rows : then(start, end)).stops(new Progress.Taken(inTime));
        WalkState state = new WalkTime(dueOn, day.today(), isNewest).state(then, stops);
        return new WalkFacts(rows.plan(), dueOn, state, then, start, stops);
    }

    private WalkSaid said(LocalDate dueOn) {
        return said.getOrDefault(dueOn, WalkSaid.NOTHING);
    }

    /** The next walk ends an older one's time, when its day begins or when it was begun. */
    private Instant end(LocalDate dueOn) {
        Optional<LocalDate> next = rows.plan().days().nextAfter(dueOn);
        return next.map(later -> PlanRows.start(later, said(later), day)).orElse(day.tomorrow());
    }

    /** What was to be read on an older walk; all that is now, where nothing had ever been read by then. */
    private PlanRows then(Instant start, Instant end) {
        boolean isNothingKnown = rows.rows().stream().noneMatch(row -> isKnown(row, end));
        return new PlanRows(rows.rows().stream()
                .map(row -> isNothingKnown || isKnown(row, end) ? row : row.withoutPoint())
                .map(row -> row.off(offAt(row.place().enclosureId(), start)))
                .toList());
    }

    private Optional<Instant> offAt(long enclosureId, Instant at) {
        return off.stream()
                .filter(time ->
                        time.enclosureId() == enclosureId && !time.from().isAfter(at))
                .filter(time -> time.to().filter(to -> !to.isAfter(at)).isEmpty())
                .map(PlannedOffTime::from)
                .findFirst();
    }

    private boolean isKnown(StepRow row, Instant end) {
        if (row.pointId().isEmpty() || row.quantity().isEmpty()) {
            return false;
        }
        StepKnown step = new StepKnown(row.pointId().get(), row.quantity().get());
        return known.contains(step)
                || taken.stream().anyMatch(one -> one.at().isBefore(end) && one.isOf(step.pointId(), step.quantity()));
    }
}
