package dapple.round;

import java.time.LocalDate;
import java.util.Optional;

/**
 * Where a round stands now.
 *
 * @param walk the newest walk that was due, or the next one where that has been begun before its day; empty: none yet
 * @param next the due day after it; empty: there is none
 * @param name of the person to whom the walk is given; empty: a role
 */
public record PlanNow(PlanFacts plan, Optional<WalkFacts> walk, Optional<LocalDate> next, Optional<String> name) {
    public boolean isOpen() {
        return walk.filter(one -> one.state().isOpen()).isPresent();
    }

    public boolean isOverdue() {
        return walk.filter(one -> one.state() == WalkState.OVERDUE).isPresent();
    }

    /** To whom the walk is given, or the round while there is no walk. */
    public GivenTo givenTo() {
        return walk.map(WalkFacts::givenTo).orElse(plan.givenTo());
    }
}
