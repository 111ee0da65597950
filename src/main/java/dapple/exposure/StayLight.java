package dapple.exposure;

import dapple.animal.StayFacts;
import dapple.light.dose.DayOfLight;
import dapple.light.judging.PointRole;
import dapple.reading.JudgedReading;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The light of one stay within a period.
 *
 * @param stay none for days in no enclosure that is known
 * @param days those that ended there
 * @param readings of the UV index that tell of the animal, by what their point stands for
 */
public record StayLight(Optional<StayFacts> stay, List<DayOfLight> days, Map<PointRole, List<JudgedReading>> readings) {
    public Period period() {
        return new Period(days.get(0).date(), days.get(days.size() - 1).date());
    }

    public Sum sum() {
        return Sum.of(days);
    }

    /** The shortest time that lamps were on in a day, where it is known of a day. */
    public Optional<Duration> shortestLit() {
        return days.stream().flatMap(day -> day.lit().stream()).min(Duration::compareTo);
    }

    public Optional<Duration> longestLit() {
        return days.stream().flatMap(day -> day.lit().stream()).max(Duration::compareTo);
    }

    /** The middle one of the readings, after calibration. */
    public Optional<Double> median(String role) {
        List<Double> amounts = readings.getOrDefault(PointRole.valueOf(role), List.of()).stream()
                .map(JudgedReading::amount)
                .sorted()
                .toList();
        return amounts.isEmpty()
                ? Optional.empty()
                : Optional.of((amounts.get((amounts.size() - 1) / 2) + amounts.get(amounts.size() / 2)) / 2);
    }

    public int readingCount() {
        return readings.values().stream().mapToInt(List::size).sum();
    }

    /** The meters that were read, by id. */
    public List<Long> meterIds() {
        return readings.values().stream()
                .flatMap(List::stream)
                .map(JudgedReading::meterId)
                .distinct()
                .sorted()
                .toList();
    }
}
