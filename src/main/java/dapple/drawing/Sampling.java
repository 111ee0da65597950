package dapple.drawing;

import dapple.drawing.StripHistory.Window;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Which readings are drawn and which of them are joined. Joined are readings at most 14 days apart with no event between.
 * Where there are too many to draw, the lowest and the highest of each step of time stay, and the newest.
 *
 * @param runs readings joined by one line each
 * @param readings how many there are, drawn or not
 */
record Sampling(List<List<StripReading>> runs, List<Gap> gaps, int readings) {
    /** Days of the calendar; readings further apart have a gap between them: common practice, no source. */
    private static final int JOINED_DAYS = 14;

    private static final Comparator<StripReading> BY_AMOUNT =
            Comparator.comparingDouble(reading -> reading.measured().amount());

    /** More than 14 days without a reading, as far as the drawing shows them. */
    record Gap(Instant from, Instant until) {}

    /** A reading with the number of the run that it belongs to. */
    private record Numbered(StripReading reading, int run) {}

    static Sampling of(StripHistory history, Window window, int bins) {
        List<Numbered> all = numbered(history).stream()
                .filter(one -> window.contains(one.reading().at()))
                .toList();
        List<Numbered> drawn = all.size() > 2 * bins ? extremes(all, window, bins) : all;
        return new Sampling(runs(drawn), gaps(history, window), all.size());
    }

    private static List<Numbered> numbered(StripHistory history) {
        List<StripReading> readings = history.readings();
        List<Numbered> numbered = new ArrayList<>();
        int run = 0;
        for (int i = 0; i < readings.size(); i++) {
            if (i > 0 && isApart(readings.get(i - 1), readings.get(i), history)) {
                run++;
            }
            numbered.add(new Numbered(readings.get(i), run));
        }
        return numbered;
    }

    private static boolean isApart(StripReading before, StripReading after, StripHistory history) {
        return isGap(before.at(), after.at(), history.zone())
                || history.events().stream()
                        .anyMatch(event ->
                                event.at().isAfter(before.at()) && !event.at().isAfter(after.at()));
    }

    private static boolean isGap(Instant before, Instant after, ZoneId zone) {
        return ChronoUnit.DAYS.between(LocalDate.ofInstant(before, zone), LocalDate.ofInstant(after, zone))
                > JOINED_DAYS;
    }

    private static List<Numbered> extremes(List<Numbered> all, Window window, int bins) {
        long step = Duration.between(window.from(), window.until()).toMillis() / bins + 1;
        Map<Long, List<Numbered>> byStep = new TreeMap<>();
        for (Numbered one : all) {
            long bin = Duration.between(window.from(), one.reading().at()).toMillis() / step;
            byStep.computeIfAbsent(bin, first -> new ArrayList<>()).add(one);
        }
        Numbered newest = all.get(all.size() - 1);
        return Stream.concat(byStep.values().stream().flatMap(Sampling::extremes), Stream.of(newest))
                .distinct()
                .toList();
    }

    private static Stream<Numbered> extremes(List<Numbered> step) {
        Comparator<Numbered> byAmount = Comparator.comparing(Numbered::reading, BY_AMOUNT);
        Numbered lowest = step.stream().min(byAmount).orElseThrow();
        Numbered highest = step.stream().max(byAmount).orElseThrow();
        return Stream.of(lowest, highest)
                .distinct()
                .sorted(Comparator.comparing(one -> one.reading().at()));
    }

    private static List<List<StripReading>> runs(Collection<Numbered> drawn) {
        Map<Integer, List<StripReading>> runs = new TreeMap<>();
        for (Numbered one : drawn) {
            runs.computeIfAbsent(one.run(), first -> new ArrayList<>()).add(one.reading());
        }
        return List.copyOf(runs.values());
    }

    private static List<Gap> gaps(StripHistory history, Window window) {
        List<Gap> gaps = new ArrayList<>();
        Instant before = window.from();
        for (StripReading reading : history.readings()) {
            addGap(gaps, new Gap(before, reading.at()), window, history.zone());
            before = reading.at();
        }
        addGap(
                gaps,
                new Gap(before, before.isBefore(window.until()) ? window.until() : before),
                window,
                history.zone());
        return gaps;
    }

    private static void addGap(List<Gap> gaps, Gap gap, Window window, ZoneId zone) {
        Instant from = gap.from().isAfter(window.from()) ? gap.from() : window.from();
        Instant until = gap.until().isBefore(window.until()) ? gap.until() : window.until();
        if (isGap(gap.from(), gap.until(), zone) && from.isBefore(until)) {
            gaps.add(new Gap(from, until));
        }
    }
}
