package dapple.archive.sheet;

import dapple.animal.Animals;
import dapple.archive.RecordMaking;
import dapple.meter.CalibrationDetails;
import dapple.meter.Calibrations;
import dapple.meter.MeterFacts;
import dapple.meter.Meters;
import dapple.review.DecisionFacts;
import dapple.review.ReviewRecords;
import dapple.rig.RigChangeKind;
import dapple.rig.RigChangesTold;
import dapple.site.Formats;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;

/** A year on one to three pages: what was kept, how much of it was read and on target, and what was done where it was not. */
@Component
class YearSummary {
    private static final List<Double> ENCLOSURE_COLUMNS = List.of(0.0, 0.3, 0.47, 0.62, 0.77, 0.9);
    private static final List<Double> METER_COLUMNS = List.of(0.0, 0.12, 0.42, 0.6, 0.85);
    private static final List<Double> SUM_COLUMNS = List.of(0.0, 0.34);

    /** So that it stays a summary; the sheets hold all. */
    private static final int MOST_ENCLOSURES = 60;

    private static final int MOST_OFF_TARGET = 20;
    private static final int MOST_METERS = 25;

    private final WeeksOnTarget weeks;
    private final Meters meters;
    private final Calibrations calibrations;
    private final ReviewRecords review;
    private final RigChangesTold changes;
    private final Animals animals;
    private final Formats formats;
    private final MessageSource words;

    YearSummary(
            WeeksOnTarget weeks,
            Meters meters,
            Calibrations calibrations,
            ReviewRecords review,
            RigChangesTold changes,
            Animals animals,
            Formats formats,
            MessageSource words) {
        this.weeks = weeks;
        this.meters = meters;
        this.calibrations = calibrations;
        this.review = review;
        this.changes = changes;
        this.animals = animals;
        this.formats = formats;
        this.words = words;
    }

    void write(RecordMaking making, OutputStream to) throws IOException {
        TextPages pages = new TextPages();
        YearOfWeeks year = weeks.of(making);
        head(making, year, pages);
        enclosures(year, pages);
        offTarget(making, year, pages);
        meters(making, pages);
        sums(making, pages);
        pages.write(say("summary.foot", making.span().site().name(), days(making)), to);
    }

    private String days(RecordMaking making) {
        return say("summary.days", formats.day(making.firstDay()), formats.day(making.lastDay()));
    }

    private void head(RecordMaking making, YearOfWeeks year, TextPages pages) {
        pages.title(say("summary.head", making.span().site().name()));
        pages.text(days(making));
        pages.text(say(
                "summary.made",
                making.madeBy(),
                formats.dayAndTime(making.madeAt(), making.span().site().timeZone()),
                making.span().site().timeZone().getId()));
        pages.heading(say("summary.caution.head"));
        pages.text(say("summary.caution"));
        pages.heading(say("summary.counts.head"));
        int lived = Math.toIntExact(animals.staysDuring(making.siteId(), making.from(), making.until()).stream()
                .map(stay -> stay.animal().id())
                .distinct()
                .count());
        pages.text(say(
                "summary.counts",
                year.enclosures().size(),
                lived,
                meters.byId(making.siteId()).size(),
                year.readings()));
    }

    private void enclosures(YearOfWeeks year, TextPages pages) {
        pages.heading(say("summary.enclosures"));
        pages.text(say("summary.enclosures.text"));
        pages.row(ENCLOSURE_COLUMNS, columns("summary.enclosures.columns"));
        year.enclosures().stream().limit(MOST_ENCLOSURES).forEach(one -> pages.row(ENCLOSURE_COLUMNS, row(one)));
        more(year.enclosures().size() - MOST_ENCLOSURES, "enclosures.csv", pages);
    }

    private List<String> row(EnclosureYear one) {
        return List.of(
                one.enclosure().code() + ", " + one.enclosure().room(),
                say("summary.of", one.read(), one.due()),
                share(one.shareRead()),
                say("summary.of", one.found(WeekFound.ON_TARGET), one.read()),
                share(one.shareOnTarget()),
                String.valueOf(one.found(WeekFound.OFF_TARGET)));
    }

    private String share(Optional<Double> share) {
        return share.map(formats::percent).orElseGet(() -> say("summary.unknown"));
    }

    /** Where weeks were off target, most weeks first, with what was decided and changed there. */
    private void offTarget(RecordMaking making, YearOfWeeks year, TextPages pages) {
        List<EnclosureYear> off = year.enclosures().stream()
                .filter(one -> one.found(WeekFound.OFF_TARGET) > 0)
                .sorted(Comparator.comparingInt(one -> -one.found(WeekFound.OFF_TARGET)))
                .toList();
        pages.heading(say("summary.off"));
        if (off.isEmpty()) {
            pages.text(say(year.readings() == 0 ? "summary.off.unread" : "summary.off.none"));
            return;
        }
        DoneAbout done =
                done(making, off.stream().map(one -> one.enclosure().id()).toList());
        off.stream()
                .limit(MOST_OFF_TARGET)
                .forEach(one -> pages.text(say(
                        "summary.off.one",
                        one.enclosure().code(),
                        one.found(WeekFound.OFF_TARGET),
                        done.said(one.enclosure().id()))));
        more(off.size() - MOST_OFF_TARGET, "enclosures.csv", pages);
    }

    private DoneAbout done(RecordMaking making, List<Long> enclosures) {
        return new DoneAbout(
                words,
                review.decisions(making.siteId(), making.from(), making.span().to()).stream()
                        .collect(Collectors.groupingBy(DecisionFacts::enclosureId)),
                changes
                        .between(
                                making.siteId(),
                                enclosures,
                                making.from(),
                                making.span().to())
                        .stream()
                        .filter(told -> told.change().kind() != RigChangeKind.FIRST_SET_UP)
                        .collect(Collectors.groupingBy(told -> told.change().enclosureId())));
    }

    private void meters(RecordMaking making, TextPages pages) {
        List<MeterFacts> all = meters.byId(making.siteId()).values().stream()
                .sorted(Comparator.comparing(MeterFacts::code))
                .toList();
        pages.heading(say("summary.meters"));
        pages.row(METER_COLUMNS, columns("summary.meters.columns"));
        all.stream().limit(MOST_METERS).forEach(meter -> pages.row(METER_COLUMNS, row(making, meter)));
        more(all.size() - MOST_METERS, "readings.csv", pages);
    }

    private List<String> row(RecordMaking making, MeterFacts meter) {
        Optional<CalibrationDetails> newest = calibrations.of(making.siteId(), meter.id()).stream()
                .filter(one -> one.withdrawal().isEmpty())
                .findFirst();
        return List.of(
                meter.code(),
                meter.description(),
                newest.map(one -> formats.day(
                                one.calibratedAt(), making.span().site().timeZone()))
                        .orElseGet(() -> say("summary.uncalibrated")),
                newest.map(CalibrationDetails::certificate).orElse(""),
                newest.map(one -> formats.day(one.dueOn())).orElse(""));
    }

    /** Those of the sheets; with the tables and files there may be thousands. */
    private void sums(RecordMaking making, TextPages pages) {
        Map<String, String> all = new TreeMap<>(making.sums());
        Map<String, String> sheets = new TreeMap<>(all);
        sheets.keySet().removeIf(name -> !name.startsWith("sheets/"));
        pages.heading(say("summary.sums"));
        pages.text(say("summary.sums.text", all.size() - sheets.size()));
        sheets.forEach((name, sum) -> pages.row(SUM_COLUMNS, List.of(name, sum)));
    }

    private void more(int count, String sheet, TextPages pages) {
        if (count > 0) {
            pages.text(say("summary.more", count, sheet));
        }
    }

    private List<String> columns(String key) {
        return List.of(say(key).split("\\|", -1));
    }

    private String say(String key, Object... arguments) {
        return words.getMessage(key, arguments, Locale.UK);
    }
}
