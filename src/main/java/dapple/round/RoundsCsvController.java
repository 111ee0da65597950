package dapple.round;

import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.People;
import dapple.people.SignedIn;
import dapple.site.CsvColumns;
import dapple.site.CsvSheets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.servlet.View;

/** The rounds of a site as a file, and the walks of one. */
@Controller
@Allowed(Action.SEE_TODAY)
class RoundsCsvController {
    private final Rounds rounds;
    private final RoundArranging arranging;
    private final Coverages coverages;
    private final People people;
    private final CsvSheets sheets;

    RoundsCsvController(Rounds rounds, RoundArranging arranging, Coverages coverages, People people, CsvSheets sheets) {
        this.rounds = rounds;
        this.arranging = arranging;
        this.coverages = coverages;
        this.people = people;
        this.sheets = sheets;
    }

    @GetMapping("/rounds.csv")
    View all(@AuthenticationPrincipal SignedIn me) {
        List<PlanNow> now = rounds.now(me);
        Set<Long> goingOn = now.stream().map(one -> one.plan().id()).collect(Collectors.toSet());
        Stream<PlanNow> ended = arranging.all(me.siteId()).stream()
                .filter(plan -> !goingOn.contains(plan.id()))
                .map(plan -> new PlanNow(plan, Optional.empty(), Optional.empty(), Optional.empty()));
        return sheets.of(
                me.site(),
                "rounds",
                columns(people.names(me.siteId())),
                Stream.concat(now.stream(), ended).toList());
    }

    private static CsvColumns<PlanNow> columns(Map<Long, String> names) {
        return CsvColumns.<PlanNow>none()
                .with("round", row -> row.plan().title())
                .word("weekdays", "weekday.", row -> weekly(row).map(Cadence.Weekdays::inOrder))
                .with("every-days", row -> daily(row).map(Cadence.Every::days))
                .with("first-day", row -> row.plan().days().first())
                .with("last-day", row -> row.plan().days().last())
                .with("given-to-person", row -> row.givenTo().ofPerson().map(names::get))
                .word("given-to-role", "role.", row -> row.givenTo().ofRole())
                .with("newest-walk", walk(WalkFacts::dueOn))
                .word("walk-state", "round.state.", walk(WalkFacts::state))
                .with("enclosures-done", walk(WalkFacts::doorsDone))
                .with("enclosures-to-do", walk(WalkFacts::doors))
                .with("next-walk", PlanNow::next);
    }

    private static Function<PlanNow, Optional<?>> walk(Function<WalkFacts, ?> part) {
        return row -> row.walk().map(part);
    }

    private static Optional<Cadence.Weekdays> weekly(PlanNow row) {
        return row.plan().days().cadence() instanceof Cadence.Weekdays weekly ? Optional.of(weekly) : Optional.empty();
    }

    private static Optional<Cadence.Every> daily(PlanNow row) {
        return row.plan().days().cadence() instanceof Cadence.Every every ? Optional.of(every) : Optional.empty();
    }

    @GetMapping("/rounds/{planId}.csv")
    View one(@AuthenticationPrincipal SignedIn me, @PathVariable long planId) {
        PlanFacts plan = arranging.get(me.siteId(), planId);
        return sheets.of(
                me.site(),
                "walks-" + plan.title(),
                WalkColumns.of(people.names(me.siteId())),
                coverages.of(me, planId).walks());
    }
}
