package dapple.season;

import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.Enclosures;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.rig.DailyTimer;
import dapple.rig.Rigs;
import dapple.rig.TimerWords;
import dapple.site.CsvColumns;
import dapple.site.CsvSheets;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.servlet.View;

/** When the lamps of an enclosure burn as a file: a row for each lamp in the middle of each month. */
@Controller
@Allowed(Action.SEE_ENCLOSURES)
class TimersCsvController {
    private static final double MINUTES_PER_HOUR = 60;

    private final Enclosures enclosures;
    private final Rigs rigs;
    private final YearOfTimers year;
    private final TimerWords words;
    private final Clock clock;
    private final CsvSheets sheets;

    TimersCsvController(
            Enclosures enclosures, Rigs rigs, YearOfTimers year, TimerWords words, Clock clock, CsvSheets sheets) {
        this.enclosures = enclosures;
        this.rigs = rigs;
        this.year = year;
        this.words = words;
        this.clock = clock;
        this.sheets = sheets;
    }

    @GetMapping("/enclosures/{enclosureId}/timers.csv")
    View of(@AuthenticationPrincipal SignedIn me, @PathVariable long enclosureId) {
        EnclosureFacts enclosure = enclosures.get(me.siteId(), enclosureId);
        TimersShown shown = year.of(me, enclosure, rigs.in(me.siteId(), enclosure, clock.instant()));
        return sheets.of(
                me.site(),
                "timers-" + enclosure.code(),
                columns(enclosure),
                shown.rows().stream().flatMap(Row::of).toList());
    }

    private CsvColumns<Row> columns(EnclosureFacts enclosure) {
        return CsvColumns.<Row>none()
                .with("room", row -> enclosure.room())
                .with("enclosure", row -> enclosure.code())
                .with("tag", row -> row.lamp().fitting().lamp().tag())
                .with("place", row -> row.lamp().fitting().hanging().place())
                .with("timer", row -> words.of(row.lamp().timer()))
                .with("day", Row::day)
                .with("timer-on", times(daily -> daily.on().toString()))
                .with("timer-off", times(daily -> daily.off().toString()))
                .with("timer-hours", times(daily -> daily.litMinutes() / MINUTES_PER_HOUR))
                .with("burnt-this-year", row -> row.lamp().burntThisYear().map(CsvColumns::computed))
                .with("to-burn", row -> row.lamp().toBurn().map(CsvColumns::computed));
    }

    private static Function<Row, Optional<?>> times(Function<DailyTimer, ?> part) {
        return row -> row.times().map(part);
    }

    private record Row(TimerRow lamp, LocalDate day, Optional<DailyTimer> times) {
        static Stream<Row> of(TimerRow lamp) {
            List<Optional<DailyTimer>> months = lamp.months();
            return IntStream.range(0, months.size())
                    .mapToObj(at -> new Row(lamp, TimerRow.middleOf(lamp.year(), at + 1), months.get(at)));
        }
    }
}
