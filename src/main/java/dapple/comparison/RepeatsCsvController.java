package dapple.comparison;

import dapple.meter.MeterFacts;
import dapple.meter.Meters;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.People;
import dapple.people.SignedIn;
import dapple.site.CsvColumns;
import dapple.site.CsvSheets;
import dapple.site.NotFoundException;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.servlet.View;

/** What was read twice, blind, as a file; who read what only for those who decide about findings, as on the page. */
@Controller
@Allowed(Action.LOG_READINGS)
class RepeatsCsvController {
    private final RepeatsAsked asked;
    private final Meters meters;
    private final People people;
    private final CsvSheets sheets;

    RepeatsCsvController(RepeatsAsked asked, Meters meters, People people, CsvSheets sheets) {
        this.asked = asked;
        this.meters = meters;
        this.people = people;
        this.sheets = sheets;
    }

    @GetMapping("/repeats.csv")
    View all(@AuthenticationPrincipal SignedIn me) {
        if (!me.settings().blindRepeats()) {
            throw new NotFoundException();
        }
        CsvColumns<RepeatAsked> columns = columns(meters.byId(me.siteId()));
        return sheets.of(
                me.site(),
                "repeats",
                me.may(Action.DECIDE_FINDINGS) ? withReaders(columns, people.names(me.siteId())) : columns,
                asked.lately(me.siteId()).stream()
                        .filter(repeat -> repeat.second().isPresent())
                        .toList());
    }

    private static CsvColumns<RepeatAsked> columns(Map<Long, MeterFacts> meterById) {
        return CsvColumns.<RepeatAsked>none()
                .with("read-first-at", row -> row.first().at())
                .with("read-again-at", again(RepeatAsked.Read::at))
                .with("point", RepeatAsked::where)
                .word("quantity", "quantity.", RepeatAsked::quantity)
                .with("meter", row -> code(row.first(), meterById))
                .with("second-meter", again(read -> code(read, meterById)))
                .with("second-over-first", row -> row.ratio().map(CsvColumns::computed))
                .with("readers-agree", row -> row.isByOneMeter() ? Optional.of(row.agrees()) : Optional.empty());
    }

    private static CsvColumns<RepeatAsked> withReaders(CsvColumns<RepeatAsked> columns, Map<Long, String> names) {
        return columns.with(
                        "read-first-by",
                        row -> Optional.ofNullable(names.get(row.first().personId())))
                .with("read-first", row -> row.first().amount())
                .with("read-again-by", again(read -> names.getOrDefault(read.personId(), "")))
                .with("read-again", again(RepeatAsked.Read::amount))
                .with("unit", row -> row.quantity().unit());
    }

    private static Optional<String> code(RepeatAsked.Read read, Map<Long, MeterFacts> meterById) {
        return Optional.ofNullable(meterById.get(read.meterId())).map(MeterFacts::code);
    }

    private static Function<RepeatAsked, Optional<?>> again(Function<RepeatAsked.Read, ?> part) {
        return row -> row.second().map(part);
    }
}
