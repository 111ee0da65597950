package dapple.round;

import dapple.light.quantity.Quantity;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The rows of one round, and what follows from them; at least one. */
record PlanRows(List<StepRow> rows) {
    PlanRows {
        rows = List.copyOf(rows);
    }

    /** Of the rows of several rounds, round by round. */
    static List<PlanRows> each(List<StepRow> rows) {
        return rows.stream()
                .collect(Collectors.groupingBy(row -> row.plan().id(), LinkedHashMap::new, Collectors.toList()))
                .values()
                .stream()
                .map(PlanRows::new)
                .toList();
    }

    List<Long> points() {
        return rows.stream().flatMap(row -> row.pointId().stream()).distinct().toList();
    }

    List<Long> enclosures() {
        return rows.stream().map(row -> row.place().enclosureId()).distinct().toList();
    }

    PlanFacts plan() {
        return rows.get(0).plan().facts();
    }

    /** What was said of the walk of a day, as far as the rows tell. */
    WalkSaid said(LocalDate dueOn) {
        return of(dueOn).flatMap(StepRow::walk).map(RoundWalk::said).orElse(WalkSaid.NOTHING);
    }

    PlanNow now(SiteDay day) {
        PlanFacts plan = plan();
        Optional<LocalDate> current = current(day);
        Optional<LocalDate> next = plan.days().nextAfter(current.orElse(day.today()));
        return new PlanNow(plan, current.map(dueOn -> walk(dueOn, day)), next, name(current));
    }

    /** The walk of the newest due day, or the next one where that has been begun before its day. */
    Optional<LocalDate> current(SiteDay day) {
        DueDays days = plan().days();
        return days.nextAfter(day.today())
                .filter(next -> said(next).begun().isPresent())
                .or(() -> days.newestUntil(day.today()));
    }

    private WalkFacts walk(LocalDate dueOn, SiteDay day) {
        WalkSaid said = said(dueOn);
        Instant start = start(dueOn, said, day);
        List<Stop> stops = stops(new Progress.Newest(start));
        WalkState state = new WalkTime(dueOn, day.today(), true).state(said, stops);
        return new WalkFacts(plan(), dueOn, state, said, start, stops);
    }

    /** From when on a reading counts for a walk. */
    static Instant start(LocalDate dueOn, WalkSaid said, SiteDay day) {
        Instant start = day.startOf(dueOn);
        return said.begun().map(Begun::at).filter(start::isAfter).orElse(start);
    }

    /** In walking order, as far as they are. */
    List<Stop> stops(Progress progress) {
        Map<Long, List<StepRow>> byEnclosure = rows.stream()
                .collect(Collectors.groupingBy(
                        row -> row.place().enclosureId(), LinkedHashMap::new, Collectors.toList()));
        return byEnclosure.values().stream().map(there -> stop(there, progress)).toList();
    }

    private static Stop stop(List<StepRow> there, Progress progress) {
        StepRow first = there.get(0);
        Optional<Stop.Spared> spared = spared(first);
        List<RoundStep> steps = spared.isPresent() ? List.of() : steps(there, progress);
        return new Stop(first.place(), spared, steps);
    }

    private static Optional<Stop.Spared> spared(StepRow row) {
        if (row.retiredAt().isPresent()) {
            return Optional.of(Stop.Spared.OUT_OF_USE);
        } else if (row.offSince().isPresent()) {
            return Optional.of(Stop.Spared.PLANNED_OFF);
        }
        return row.quantity().isPresent() ? Optional.empty() : Optional.of(Stop.Spared.NO_POINTS);
    }

    private static List<RoundStep> steps(List<StepRow> there, Progress progress) {
        Map<Long, Map<Quantity, StepRow>> byPoint = new LinkedHashMap<>();
        for (StepRow row : there) {
            row.pointId()
                    .ifPresent(point -> row.quantity()
                            .ifPresent(quantity -> byPoint.computeIfAbsent(point, fresh -> new LinkedHashMap<>())
                                    .putIfAbsent(quantity, row)));
        }
        return byPoint.values().stream()
                .flatMap(point -> asked(point.values()).map(row -> progress.step(row, quantity(row))))
                .toList();
    }

    /** What can be measured at a point; without any meter the first of it, so that this can be noted. */
    private static Stream<StepRow> asked(Collection<StepRow> ofPoint) {
        List<StepRow> inOrder = new ArrayList<>(ofPoint);
        inOrder.sort(Comparator.comparing(PlanRows::quantity));
        List<StepRow> measurable =
                inOrder.stream().filter(StepRow::isMeasurable).toList();
        return measurable.isEmpty() ? inOrder.stream().limit(1) : measurable.stream();
    }

    private static Quantity quantity(StepRow row) {
        return row.quantity().orElseThrow();
    }

    private Optional<String> name(Optional<LocalDate> dueOn) {
        return dueOn.flatMap(this::of).or(() -> withoutWalk()).flatMap(StepRow::name);
    }

    private Optional<StepRow> withoutWalk() {
        return rows.stream().filter(row -> row.walk().isEmpty()).findFirst();
    }

    private Optional<StepRow> of(LocalDate dueOn) {
        return rows.stream()
                .filter(row ->
                        row.walk().filter(walk -> walk.dueOn().equals(dueOn)).isPresent())
                .findFirst();
    }
}
