package dapple.drawing;

import dapple.light.judging.Band;
import dapple.light.judging.MeasuredAmount;
import dapple.light.judging.State;
import dapple.light.quantity.Interval;
import dapple.light.quantity.Quantity;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Invented readings, doses and what went on beside them. */
final class Samples {
    static final ZoneId LONDON = ZoneId.of("Europe/London");
    static final LocalDate TODAY = LocalDate.of(2026, 11, 26);
    static final LocalDate FIRST_WEEK = LocalDate.of(2025, 12, 1);
    static final int WEEKS = 52;

    private Samples() {}

    static Instant daysAgo(int days) {
        return TODAY.minusDays(days).atTime(10, 0).atZone(LONDON).toInstant();
    }

    static StripReading reading(Instant at, double amount, State state) {
        Interval interval = new Interval(amount * 0.8, amount * 1.2);
        return new StripReading(at, new MeasuredAmount(amount, interval), state, amount + " UVI, " + state);
    }

    static StripReading reading(int daysAgo, double amount) {
        return reading(daysAgo(daysAgo), amount, State.ON_TARGET);
    }

    static StripHistory of(StripReading... readings) {
        return new StripHistory(Quantity.UV_INDEX, LONDON, List.of(readings), List.of(), List.of());
    }

    static StripTarget target(int daysAgo, Instant until, Band band, String name) {
        return new StripTarget(daysAgo(daysAgo), until, band, 5, name);
    }

    /** Half a year of an enclosure: an ageing tube, a new one, a new target, a gap, a finer mesh. */
    static StripHistory basking() {
        return new StripHistory(
                Quantity.UV_INDEX,
                LONDON,
                baskingReadings(),
                List.of(
                        target(300, daysAgo(118), new Band(1.5, 3), "target 2"),
                        target(118, Instant.MAX, new Band(2, 3.5), "target 3")),
                List.of(
                        new StripEvent(daysAgo(149), "new tube L-104, 30 Jun"),
                        new StripEvent(daysAgo(20), "finer mesh, 6 Nov"),
                        new StripEvent(daysAgo(13), "branch moved, 13 Nov")));
    }

    private static List<StripReading> baskingReadings() {
        List<StripReading> readings = new ArrayList<>();
        for (int days = 189; days >= 0; days -= 7) {
            if (days > 98 || days < 68) {
                readings.add(days < 20 ? reading(daysAgo(days), 1.7, State.TOO_WEAK) : reading(days, grown(days)));
            }
        }
        readings.add(reading(daysAgo(60), 4.2, State.TOO_STRONG));
        readings.add(reading(daysAgo(59), 5.3, State.OVER_CEILING));
        return readings;
    }

    private static double grown(int days) {
        double amount = days > 149 ? 2.1 - (189 - days) * 0.005 : 2.8 - (149 - days) * 0.004;
        return Math.rint(amount * 10) / 10;
    }

    static StripHistory shade() {
        return new StripHistory(
                Quantity.UV_INDEX,
                LONDON,
                List.of(reading(80, 0.1), reading(73, 0.1), reading(57, 0.1), reading(50, 0.2)),
                List.of(new StripTarget(daysAgo(300), Instant.MAX, Band.atMost(0.3), 0.5, "target 3")),
                List.of());
    }

    static StripHistory illuminance() {
        return new StripHistory(
                Quantity.ILLUMINANCE,
                LONDON,
                IntStream.range(0, 600)
                        .mapToObj(i -> reading(
                                daysAgo(i / 4).plusSeconds(i % 4 * 900L), 9000 + 700 * (i % 13), State.NO_TARGET))
                        .toList(),
                List.of(),
                List.of());
    }

    static DoseHistory year() {
        return new DoseHistory(
                LONDON,
                IntStream.range(0, WEEKS - 1).mapToObj(Samples::week).toList(),
                List.of(new Lane("stays", stays()), new Lane("rig and orders", orders()), new Lane("vet", vet())));
    }

    private static DoseWeek week(int number) {
        LocalDate from = FIRST_WEEK.plusWeeks(number);
        if (number > 1 && number < 11) {
            return new DoseWeek(from, DoseWeek.Kind.PLANNED_OFF, 0, 0, 0, false, "winter rest");
        }
        if (number == 20 || number == 27 || number == 28) {
            return new DoseWeek(from, DoseWeek.Kind.UNKNOWN, 0, 0, 0, true, "unknown");
        }
        DoseWeek.Kind kind = number % 5 == 3 ? DoseWeek.Kind.CARRIED : DoseWeek.Kind.MEASURED;
        double highest = 34 + 20 * Math.sin(number / 8.0);
        return new DoseWeek(
                from,
                kind,
                0.7 + number % 3,
                highest * 0.4,
                highest,
                number == 15,
                "week " + number + ": best " + Math.round(highest * 0.4) + " UVI·h a day");
    }

    private static List<Lane.Entry> stays() {
        return List.of(
                new Lane.Entry(LocalDate.of(2025, 3, 1), LocalDate.of(2026, 5, 4), "E09, warm corridor, alone"),
                new Lane.Entry(LocalDate.of(2026, 5, 4), LocalDate.of(2026, 9, 20), "O2, outdoor pen, with 3 others"),
                new Lane.Entry(LocalDate.of(2026, 9, 20), LocalDate.MAX, "E18, dry room, with 1 other"));
    }

    private static List<Lane.Entry> orders() {
        return Stream.of(
                        new Lane.Entry(LocalDate.of(2026, 3, 10), LocalDate.of(2026, 3, 10), "new tube, 10 Mar"),
                        new Lane.Entry(LocalDate.of(2026, 10, 6), LocalDate.of(2026, 10, 6), "new tube, 6 Oct"),
                        new Lane.Entry(
                                LocalDate.of(2026, 10, 14), LocalDate.of(2026, 11, 11), "cap UVI 1.5 at every point"))
                .toList();
    }

    private static List<Lane.Entry> vet() {
        return List.of(
                new Lane.Entry(LocalDate.of(2026, 8, 20), LocalDate.of(2026, 8, 20), "25(OH)D3 261 nmol/L"),
                new Lane.Entry(LocalDate.of(2026, 10, 12), LocalDate.of(2026, 11, 9), "eyes shut <left>"));
    }
}
