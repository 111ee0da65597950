package dapple.reading;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A step as the end of a visit shows it: with the newest reading, if this visit has read it.
 *
 * @param cold the lamps that had not warmed up by then
 */
record StepRow(Step step, Optional<ReadingView> view, Optional<Outcome> outcome, List<ColdLamp> cold) {
    StepRow {
        cold = List.copyOf(cold);
    }

    static List<StepRow> of(Walk walk, Map<Long, List<ReadingView>> latest) {
        return walk.steps().stream()
                .map(step -> new StepRow(step, view(walk, step, latest), walk.outcome(step), List.of()))
                .toList();
    }

    StepRow under(Burning lamps) {
        return new StepRow(
                step,
                view,
                outcome,
                view.map(read -> lamps.coldAt(read.reading().takenAt(), read.quantity()))
                        .orElse(List.of()));
    }

    Optional<Instant> takenAt() {
        return view.map(read -> read.reading().takenAt());
    }

    private static Optional<ReadingView> view(Walk walk, Step step, Map<Long, List<ReadingView>> latest) {
        return latest.getOrDefault(step.point().id(), List.of()).stream()
                .filter(view -> walk.isRead(step) && view.quantity() == step.quantity())
                .findFirst();
    }
}
