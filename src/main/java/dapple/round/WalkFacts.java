package dapple.round;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * One walk of a round.
 *
 * @param windowStart from when on a reading counts: the start of its day, or when it was begun, if earlier
 * @param stops in walking order
 */
public record WalkFacts(
        PlanFacts plan, LocalDate dueOn, WalkState state, WalkSaid said, Instant windowStart, List<Stop> stops) {
    public WalkFacts {
        stops = List.copyOf(stops);
    }

    /** Who walks it: to whom it was given, or to whom the round is. */
    public GivenTo givenTo() {
        return said.givenTo().orElse(plan.givenTo());
    }

    public boolean isGivenOn() {
        return said.givenTo().filter(to -> !to.equals(plan.givenTo())).isPresent();
    }

    public List<RoundStep> doneSteps() {
        return steps().stream().filter(RoundStep::isDone).toList();
    }

    public int done() {
        return doneSteps().size();
    }

    public int all() {
        return steps().size();
    }

    public int doorsDone() {
        return Math.toIntExact(stops.stream().filter(Stop::isDone).count());
    }

    /** How many doors are walked; those at which there is nothing to read are not. */
    public int doors() {
        return Math.toIntExact(stops.stream().filter(Stop::isWalked).count());
    }

    /** The first stop that is not done. */
    public Optional<Stop> next() {
        return stops.stream().filter(stop -> stop.isWalked() && !stop.isDone()).findFirst();
    }

    public String path() {
        return "/rounds/" + plan.id() + "/walks/" + dueOn;
    }

    private List<RoundStep> steps() {
        return stops.stream().flatMap(stop -> stop.steps().stream()).toList();
    }
}
