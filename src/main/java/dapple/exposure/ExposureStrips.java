package dapple.exposure;

import dapple.animal.StayFacts;
import dapple.drawing.DoseHistory;
import dapple.drawing.DoseStrip;
import dapple.drawing.DoseWeek;
import dapple.drawing.Lane;
import dapple.drawing.StripSize;
import dapple.enclosure.EnclosureFacts;
import dapple.light.dose.DayOfLight;
import dapple.light.dose.DoseRange;
import dapple.order.OrderFacts;
import dapple.site.Given;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.springframework.stereotype.Component;

/** Draws doses by week, the last week ending with the period, above stays, changes of the rig and orders. */
@Component
class ExposureStrips {
    private static final int DAYS_OF_A_WEEK = 7;

    private final ExposureWords words;

    ExposureStrips(ExposureWords words) {
        this.words = words;
    }

    Strips of(Exposure exposure, Map<Long, EnclosureFacts> enclosures, List<OrderFacts> orders) {
        Period period = exposure.period();
        int weeks = (period.days() + DAYS_OF_A_WEEK - 1) / DAYS_OF_A_WEEK;
        LocalDate first = period.until().minusWeeks(weeks);
        List<DoseWeek> drawn = IntStream.range(0, weeks)
                .mapToObj(week -> week(exposure, first.plusWeeks(week)))
                .toList();
        List<Lane> lanes = List.of(stays(exposure, enclosures), rigs(exposure), orders(orders, exposure.zone()));
        DoseHistory history = new DoseHistory(exposure.zone(), drawn, lanes);
        int few = Math.min(weeks, StripSize.SHORT.weeks());
        return new Strips(
                DoseStrip.of(history, StripSize.LONG, first, weeks),
                DoseStrip.of(history, StripSize.SHORT, period.until().minusWeeks(few), few));
    }

    private DoseWeek week(Exposure exposure, LocalDate from) {
        List<DayOfLight> days = exposure.days().stream()
                .filter(day -> !day.date().isBefore(from) && day.date().isBefore(from.plusWeeks(1)))
                .toList();
        Sum sum = Sum.of(days);
        Period period = new Period(days.get(0).date(), days.get(days.size() - 1).date());
        return DoseWeek.of(from, sum.days(), said(period, sum));
    }

    private String said(Period period, Sum sum) {
        String known = sum.aDay().map(this::said).orElseGet(() -> words.say("exposure.unknown"));
        return words.say(
                "exposure.week",
                words.days(period),
                known,
                sum.days().measured(),
                sum.expected(),
                sum.days().doseUnknownDays());
    }

    private String said(DoseRange dose) {
        return words.say(
                "exposure.dose",
                words.uviHours(dose.best()),
                words.uviHours(dose.lowest()),
                words.uviHours(dose.highest()));
    }

    private Lane stays(Exposure exposure, Map<Long, EnclosureFacts> enclosures) {
        return new Lane(
                words.say("exposure.lane.stay"),
                exposure.lived().stays().stream()
                        .map(stay -> entry(stay, exposure.zone(), Given.of(enclosures.get(stay.enclosureId()))))
                        .toList());
    }

    private static Lane.Entry entry(StayFacts stay, ZoneId zone, EnclosureFacts place) {
        LocalDate from = LocalDate.ofInstant(stay.from(), zone);
        LocalDate until = stay.to().map(to -> LocalDate.ofInstant(to, zone)).orElse(LocalDate.MAX);
        return new Lane.Entry(from, until, place.code() + ", " + place.room());
    }

    private Lane rigs(Exposure exposure) {
        return new Lane(
                words.say("exposure.lane.rig"),
                exposure.rigEvents().stream()
                        .map(event -> {
                            LocalDate day = LocalDate.ofInstant(event.change().at(), exposure.zone());
                            return new Lane.Entry(
                                    day,
                                    day,
                                    words.say("rig-change."
                                            + event.change().kind().name()));
                        })
                        .toList());
    }

    private Lane orders(List<OrderFacts> orders, ZoneId zone) {
        return new Lane(
                words.say("exposure.lane.order"),
                orders.stream()
                        .filter(order -> order.from().isBefore(order.to()))
                        .map(order -> new Lane.Entry(
                                LocalDate.ofInstant(order.from(), zone),
                                dayAfter(order.to(), zone),
                                words.say("order-kind." + order.ordered().kind().name())))
                        .toList());
    }

    private static LocalDate dayAfter(Instant end, ZoneId zone) {
        return LocalDate.ofInstant(end.minus(1, ChronoUnit.MICROS), zone).plusDays(1);
    }

    /** For desk and paper, and for the phone: its newest weeks. */
    record Strips(DoseStrip desk, DoseStrip phone) {}
}
