package dapple.round;

import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.site.CsvColumns;
import dapple.site.CsvSheets;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.servlet.View;

/** The stops of one walk as a file, in walking order: a row for each thing to read, or one where there is nothing. */
@Controller
@Allowed(Action.SEE_TODAY)
class WalkCsvController {
    private final Rounds rounds;
    private final CsvSheets sheets;

    WalkCsvController(Rounds rounds, CsvSheets sheets) {
        this.rounds = rounds;
        this.sheets = sheets;
    }

    @GetMapping("/rounds/{planId}/walks/{dueOn}.csv")
    View of(@AuthenticationPrincipal SignedIn me, @PathVariable long planId, @PathVariable LocalDate dueOn) {
        WalkFacts walk = rounds.walk(me, planId, dueOn);
        CsvColumns<Row> columns = CsvColumns.<Row>none()
                .with("round", row -> walk.plan().title())
                .with("due-on", row -> walk.dueOn())
                .with("room", row -> row.stop().place().room())
                .with("enclosure", row -> row.stop().place().code())
                .word("nothing-to-read", "round.spared.", row -> row.stop().spared())
                .with("point", step(RoundStep::point))
                .word("quantity", "quantity.", step(RoundStep::quantity))
                .with("done", step(RoundStep::isDone))
                .word("not-read-because", "outcome.", row -> row.step().flatMap(RoundStep::outcome));
        return sheets.of(
                me.site(),
                "walk-" + walk.plan().title() + "-of-" + walk.dueOn(),
                columns,
                walk.stops().stream().flatMap(Row::of).toList());
    }

    private static Function<Row, Optional<?>> step(Function<RoundStep, ?> part) {
        return row -> row.step().map(part);
    }

    private record Row(Stop stop, Optional<RoundStep> step) {
        static Stream<Row> of(Stop stop) {
            return stop.steps().isEmpty()
                    ? Stream.of(new Row(stop, Optional.empty()))
                    : stop.steps().stream().map(step -> new Row(stop, Optional.of(step)));
        }
    }
}
