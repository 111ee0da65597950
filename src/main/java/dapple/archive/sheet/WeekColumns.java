package dapple.archive.sheet;

import dapple.light.judging.PointRole;
import dapple.site.CsvColumns;
import java.time.LocalDate;
import java.time.temporal.IsoFields;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

/** The columns of weeks, and of what they come to for each enclosure. */
final class WeekColumns {
    private static final List<PointRole> JUDGED =
            List.of(PointRole.BASKING, PointRole.GRADIENT, PointRole.SHADE, PointRole.NEAREST_REACHABLE);

    private WeekColumns() {}

    /** A week of one enclosure. */
    record Row(EnclosureYear year, EnclosureWeek week) {}

    static CsvColumns<Row> ofWeeks() {
        CsvColumns<Row> columns = CsvColumns.<Row>none()
                .with("room", row -> row.year().enclosure().room())
                .with("enclosure", row -> row.year().enclosure().code())
                .with("week", row -> name(row.week().monday()))
                .with("week-begins", row -> row.week().monday())
                .word("week-due", "week-due.", row -> row.week().due())
                .with("read", row -> row.week().isRead())
                .with("readings", row -> row.week().readings())
                .word("week-found", "week-found.", row -> row.week().asAWhole());
        for (PointRole role : JUDGED) {
            columns = columns.word(
                    "week-found." + role, "week-found.", row -> row.week().at(role));
        }
        return columns;
    }

    static CsvColumns<EnclosureYear> ofEnclosures() {
        return CsvColumns.<EnclosureYear>none()
                .with("room", year -> year.enclosure().room())
                .with("enclosure", year -> year.enclosure().code())
                .with("weeks", year -> year.weeks().size())
                .with("weeks-due", EnclosureYear::due)
                .with("weeks-read", EnclosureYear::read)
                .with("share-read", percent(EnclosureYear::shareRead))
                .with("weeks-on-target", year -> year.found(WeekFound.ON_TARGET))
                .with("share-on-target", percent(EnclosureYear::shareOnTarget))
                .with("weeks-off-target", year -> year.found(WeekFound.OFF_TARGET))
                .with("weeks-borderline", year -> year.found(WeekFound.BORDERLINE))
                .with("weeks-unknown", year -> year.found(WeekFound.UNKNOWN));
    }

    private static Function<EnclosureYear, Optional<Double>> percent(Function<EnclosureYear, Optional<Double>> share) {
        return share.andThen(found -> found.map(part -> Math.rint(part * 1000) / 10));
    }

    /** As in 2026-W05 (ISO 8601). */
    static String name(LocalDate monday) {
        return String.format(
                Locale.ROOT,
                "%d-W%02d",
                monday.get(IsoFields.WEEK_BASED_YEAR),
                monday.get(IsoFields.WEEK_OF_WEEK_BASED_YEAR));
    }
}
