package dapple.light.dose;

import dapple.light.judging.MeasuredAmount;
import dapple.light.judging.PointRole;
import dapple.light.quantity.Interval;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The readings of one spell by local day. */
final class ReadDays {
    private static final Comparator<MeasuredAmount> BY_AMOUNT = Comparator.comparingDouble(MeasuredAmount::amount)
            .thenComparingDouble(reading -> reading.interval().low())
            .thenComparingDouble(reading -> reading.interval().high());

    private final Map<PointRole, NavigableMap<LocalDate, UvIndexOfDay.Measured>> measured =
            new EnumMap<>(PointRole.class);
    private final NavigableMap<LocalDate, DayJudgement> judged = new TreeMap<>();

    ReadDays(List<PointReading> readings, ZoneId zone) {
        byDay(readings, zone, PointReading::judged)
                .forEach((day, states) -> judged.put(day, DayJudgement.ofReadings(states)));
        readings.stream()
                .collect(Collectors.groupingBy(PointReading::role))
                .forEach((role, there) -> measured.put(role, medians(there, zone)));
    }

    UvIndexOfDay index(PointRole role, LocalDate day, int carryDays) {
        NavigableMap<LocalDate, UvIndexOfDay.Measured> there = measured.getOrDefault(role, new TreeMap<>());
        UvIndexOfDay.Measured that = there.get(day);
        if (that != null) {
            return that;
        }
        return Neighbours.around(day, there, carryDays)
                .<UvIndexOfDay>map(both -> carried(both, day))
                .orElseGet(UvIndexOfDay.Unknown::new);
    }

    /** What the day's own readings were judged; between two days, what both were. */
    DayJudgement judgement(LocalDate day, int carryDays) {
        DayJudgement that = judged.get(day);
        if (that != null) {
            return that;
        }
        return Neighbours.around(day, judged, carryDays)
                .filter(both -> both.first() == both.second())
                .map(Neighbours::first)
                .orElse(DayJudgement.UNKNOWN);
    }

    private static UvIndexOfDay.Carried carried(Neighbours<UvIndexOfDay.Measured> both, LocalDate day) {
        MeasuredAmount between = between(both.first().median(), both.second().median(), both.shareAt(day));
        return new UvIndexOfDay.Carried(between, both.before(), both.after());
    }

    private static NavigableMap<LocalDate, UvIndexOfDay.Measured> medians(List<PointReading> readings, ZoneId zone) {
        NavigableMap<LocalDate, UvIndexOfDay.Measured> medians = new TreeMap<>();
        byDay(readings, zone, PointReading::index).forEach((day, amounts) -> medians.put(day, median(amounts)));
        return medians;
    }

    private static UvIndexOfDay.Measured median(List<MeasuredAmount> amounts) {
        List<MeasuredAmount> sorted = amounts.stream().sorted(BY_AMOUNT).toList();
        MeasuredAmount lower = sorted.get((sorted.size() - 1) / 2);
        MeasuredAmount upper = sorted.get(sorted.size() / 2);
        return new UvIndexOfDay.Measured(between(lower, upper, 0.5), sorted.size());
    }

    private static MeasuredAmount between(MeasuredAmount first, MeasuredAmount second, double share) {
        return new MeasuredAmount(
                between(first.amount(), second.amount(), share),
                new Interval(
                        between(first.interval().low(), second.interval().low(), share),
                        between(first.interval().high(), second.interval().high(), share)));
    }

    /** Written so that rounding keeps the order of what is carried side by side. */
    private static double between(double first, double second, double share) {
        return (1 - share) * first + share * second;
    }

    private static <T> Map<LocalDate, List<T>> byDay(
            List<PointReading> readings, ZoneId zone, Function<PointReading, T> part) {
        Map<LocalDate, List<T>> days = new TreeMap<>();
        for (PointReading reading : readings) {
            days.computeIfAbsent(LocalDate.ofInstant(reading.at(), zone), day -> new ArrayList<>())
                    .add(part.apply(reading));
        }
        return days;
    }
}
