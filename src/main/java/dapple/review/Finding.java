package dapple.review;

import dapple.light.judging.State;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * An enclosure that needs somebody, with what has been decided since it does.
 *
 * @param decisions those made since the finding began, oldest first
 */
public record Finding(Standing standing, Urgency urgency, List<DecisionFacts> decisions) {
    static Finding of(Standing standing, Urgency urgency, List<DecisionFacts> ofEnclosure) {
        Instant since = standing.deciding().flatMap(Standing.AtPoint::since).orElse(Instant.MIN);
        return new Finding(
                standing,
                urgency,
                ofEnclosure.stream()
                        .filter(decision -> !decision.madeAt().isBefore(since))
                        .toList());
    }

    /** The acceptance that holds on a day; none once the state is graver than what was accepted. */
    public Optional<DecisionFacts> acceptance(LocalDate today) {
        State now = standing.state().orElse(State.ON_TARGET);
        return last(DecisionKind.ACCEPTED)
                .filter(accepted ->
                        accepted.until().filter(day -> !day.isBefore(today)).isPresent())
                .filter(accepted -> !now.isGraverThan(accepted.state()));
    }

    /** Who was asked to see to it, last. */
    public Optional<DecisionFacts> given() {
        return last(DecisionKind.GIVEN);
    }

    /** That somebody was asked to read again, until the deciding point has been read since. */
    public Optional<DecisionFacts> secondReading() {
        return last(DecisionKind.SECOND_READING)
                .filter(asked -> standing.deciding()
                        .flatMap(Standing.AtPoint::takenAt)
                        .filter(taken -> taken.isAfter(asked.madeAt()))
                        .isEmpty());
    }

    public List<DecisionFacts> notes() {
        return decisions.stream()
                .filter(decision -> decision.kind() == DecisionKind.NOTE)
                .toList();
    }

    private Optional<DecisionFacts> last(DecisionKind kind) {
        return decisions.stream().filter(decision -> decision.kind() == kind).reduce((earlier, later) -> later);
    }
}
