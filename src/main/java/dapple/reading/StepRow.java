package dapple.reading;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A step as the end of a visit shows it: with the newest reading, if this visit has read it. */
record StepRow(Step step, Optional<ReadingView> view, Optional<Outcome> outcome) {
    static List<StepRow> of(Walk walk, Map<Long, List<ReadingView>> latest) {
        return walk.steps().stream()
                .map(step -> new StepRow(step, view(walk, step, latest), walk.outcome(step)))
                .toList();
    }

    private static Optional<ReadingView> view(Walk walk, Step step, Map<Long, List<ReadingView>> latest) {
        return latest.getOrDefault(step.point().id(), List.of()).stream()
                .filter(view -> walk.isRead(step) && view.quantity() == step.quantity())
                .findFirst();
    }
}
