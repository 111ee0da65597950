package dapple.round;

import java.util.List;
import java.util.Optional;

/**
 * An enclosure on a walk.
 *
 * @param spared why there is nothing to read; then it has no steps, and the walk is none the less done without it
 */
public record Stop(StopPlace place, Optional<Spared> spared, List<RoundStep> steps) {
    /** Why a stop drops out of a walk. */
    public enum Spared {
        PLANNED_OFF,
        OUT_OF_USE,
        NO_POINTS
    }

    public Stop {
        steps = List.copyOf(steps);
    }

    public long enclosureId() {
        return place.enclosureId();
    }

    public boolean isWalked() {
        return spared.isEmpty();
    }

    public int done() {
        return Math.toIntExact(steps.stream().filter(RoundStep::isDone).count());
    }

    public boolean isDone() {
        return isWalked() && done() == steps.size();
    }

    /** Steps of which a reason was noted instead of a reading. */
    public List<RoundStep> noted() {
        return steps.stream().filter(step -> step.outcome().isPresent()).toList();
    }
}
