package dapple.light.dose;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.NavigableMap;
import java.util.Optional;

/** What was found on the nearest day before, and on the nearest after. */
record Neighbours<T>(LocalDate before, T first, LocalDate after, T second) {
    /** The two, where they are at most so many days of the calendar apart. */
    static <T> Optional<Neighbours<T>> around(LocalDate day, NavigableMap<LocalDate, T> found, int apartDays) {
        var lower = found.lowerEntry(day);
        var higher = found.higherEntry(day);
        if (lower == null || higher == null || ChronoUnit.DAYS.between(lower.getKey(), higher.getKey()) > apartDays) {
            return Optional.empty();
        }
        return Optional.of(new Neighbours<>(lower.getKey(), lower.getValue(), higher.getKey(), higher.getValue()));
    }

    /** Share of the way from the one to the other at a day between. */
    double shareAt(LocalDate day) {
        return (double) ChronoUnit.DAYS.between(before, day) / ChronoUnit.DAYS.between(before, after);
    }
}
