package dapple.practice;

import dapple.meter.MeterFacts;
import dapple.meter.MeterRegister;
import dapple.meter.Withdrawal;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.People;
import dapple.people.SignedIn;
import dapple.site.CsvColumns;
import dapple.site.CsvSheets;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.servlet.View;

/** The checks of a meter and what happened to it as a file, newest first. */
@Controller
@Allowed(Action.SEE_STOCK)
class PracticeCsvController {
    private final MeterRegister meters;
    private final PracticeRecord record;
    private final People people;
    private final CsvSheets sheets;

    PracticeCsvController(MeterRegister meters, PracticeRecord record, People people, CsvSheets sheets) {
        this.meters = meters;
        this.record = record;
        this.people = people;
        this.sheets = sheets;
    }

    @GetMapping("/meters/{meterId}/practice.csv")
    View of(@AuthenticationPrincipal SignedIn me, @PathVariable long meterId) {
        MeterFacts meter = meters.get(me.siteId(), meterId).facts();
        Stream<Row> checks = record.checks(me.siteId(), meterId).stream().map(Row::of);
        Stream<Row> events = record.events(me.siteId(), meterId).stream().map(Row::of);
        List<Row> rows = Stream.concat(checks, events)
                .sorted(Comparator.comparing(Row::at).reversed())
                .toList();
        return sheets.of(me.site(), "practice-" + meter.code(), columns(meter, people.names(me.siteId())), rows);
    }

    private static CsvColumns<Row> columns(MeterFacts meter, Map<Long, String> names) {
        return CsvColumns.<Row>none()
                .with("meter", row -> meter.code())
                .with("at", Row::at)
                .word("check", "check-kind.", check(MeterCheckFacts::kind))
                .word("happening", "meter-event.", event(MeterEventFacts::kind))
                .with("shown", check(MeterCheckFacts::amount))
                .with("unit", row -> meter.quantity().unit())
                .with("limit-low", check(one -> CsvColumns.computed(one.lowest())))
                .with("limit-high", check(one -> CsvColumns.computed(one.highest())))
                .with("within-limits", check(MeterCheckFacts::good))
                .with("note", Row::note)
                .with("recorded-by", row -> Optional.ofNullable(names.get(row.recordedBy())))
                .with("withdrawn-at", gone(Withdrawal::at))
                .with("withdrawn-by", gone(one -> names.getOrDefault(one.personId(), "")))
                .with("withdrawn-because", gone(Withdrawal::reason));
    }

    private static Function<Row, Optional<?>> check(Function<MeterCheckFacts, ?> part) {
        return row -> row.check().map(part);
    }

    private static Function<Row, Optional<?>> event(Function<MeterEventFacts, ?> part) {
        return row -> row.event().map(part);
    }

    private static Function<Row, Optional<?>> gone(Function<Withdrawal, ?> part) {
        return row -> row.event().flatMap(MeterEventFacts::withdrawal).map(part);
    }

    private record Row(
            Instant at,
            String note,
            long recordedBy,
            Optional<MeterCheckFacts> check,
            Optional<MeterEventFacts> event) {
        static Row of(MeterCheckFacts check) {
            return new Row(check.at(), check.note(), check.recordedBy(), Optional.of(check), Optional.empty());
        }

        static Row of(MeterEventFacts event) {
            return new Row(event.at(), event.note(), event.recordedBy(), Optional.empty(), Optional.of(event));
        }
    }
}
