package dapple.archive.sheet;

import dapple.archive.RecordMaking;
import dapple.archive.RecordSheet;
import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.Enclosures;
import dapple.people.People;
import dapple.reading.ReadingColumns;
import dapple.reading.ReadingLine;
import dapple.reading.ReadingLines;
import dapple.rig.RigChangesTold;
import dapple.round.Coverages;
import dapple.round.WalkColumns;
import dapple.site.CsvColumns;
import dapple.site.CsvRows;
import dapple.site.CsvWriting;
import dapple.target.Targets;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.annotation.Order;

/** The readable part of a year's record, in the order in which it is written: the summary names the sums of all others. */
@Configuration(proxyBeanMethods = false)
class YearSheets {
    private static final int LAST = 100;

    private final CsvWriting writing;
    private final People people;

    YearSheets(CsvWriting writing, People people) {
        this.writing = writing;
        this.people = people;
    }

    @Bean
    @Order(1)
    RecordSheet readingsOfTheYear(ReadingLines lines, Targets targets) {
        return sheet(
                "readings.csv",
                making -> ReadingColumns.of(names(making), targets.speciesById(making.siteId())),
                making -> row -> eachCounted(making, lines, row));
    }

    /** The weeks are counted as the readings pass. */
    private static void eachCounted(RecordMaking making, ReadingLines lines, Consumer<ReadingLine> row) {
        WeekTally tally = new WeekTally(making.span().site().timeZone());
        lines.taken(making.siteId(), making.from(), making.span().to(), line -> {
            tally.add(line);
            row.accept(line);
        });
        making.keep(WeekTally.class, tally);
    }

    @Bean
    @Order(2)
    RecordSheet weeksOfTheYear(WeeksOnTarget weeks) {
        return sheet(
                "weeks.csv",
                making -> WeekColumns.ofWeeks(),
                making -> weeks.of(making).enclosures().stream()
                        .flatMap(year -> year.weeks().stream().map(week -> new WeekColumns.Row(year, week)))
                        .toList()::forEach);
    }

    @Bean
    @Order(3)
    RecordSheet enclosuresOfTheYear(WeeksOnTarget weeks) {
        return sheet(
                "enclosures.csv",
                making -> WeekColumns.ofEnclosures(),
                making -> weeks.of(making).enclosures()::forEach);
    }

    @Bean
    @Order(4)
    RecordSheet changesOfTheYear(RigChangesTold changes, Enclosures enclosures) {
        return sheet(
                "lamp-and-cover-changes.csv",
                making -> RigChangesTold.columns(places(making, enclosures), names(making)),
                making -> changes.between(
                        making.siteId(),
                        places(making, enclosures).keySet(),
                        making.from(),
                        making.span().to())::forEach);
    }

    @Bean
    @Order(5)
    RecordSheet correctionsOfTheYear(Corrections corrections) {
        return sheet(
                "corrections.csv", making -> Undone.columns(names(making)), making -> corrections.of(making)::forEach);
    }

    @Bean
    @Order(6)
    RecordSheet roundsOfTheYear(Coverages coverages) {
        return sheet(
                "rounds.csv",
                making -> WalkColumns.of(names(making)),
                making -> walk -> coverages.between(making.span().site(), making.firstDay(), making.lastDay(), walk));
    }

    @Bean
    @Order(LAST)
    RecordSheet summaryOfTheYear(YearSummary summary) {
        return new RecordSheet("summary.pdf", summary::write);
    }

    private Map<Long, String> names(RecordMaking making) {
        return people.names(making.siteId());
    }

    private static Map<Long, EnclosureFacts> places(RecordMaking making, Enclosures enclosures) {
        return enclosures.all(making.siteId()).stream()
                .collect(Collectors.toMap(EnclosureFacts::id, Function.identity()));
    }

    private <T> RecordSheet sheet(
            String fileName, Function<RecordMaking, CsvColumns<T>> columns, Function<RecordMaking, CsvRows<T>> rows) {
        return new RecordSheet(
                fileName,
                (making, to) -> writing.write(
                        columns.apply(making),
                        rows.apply(making),
                        making.span().site().timeZone(),
                        to));
    }
}
