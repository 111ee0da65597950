package dapple.round;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The days on which a round is due, in the time of the site.
 *
 * @param first the first day on which it may be due; days of an interval are counted from it
 * @param last the last day on which it may be due; empty: it does not end
 */
public record DueDays(Cadence cadence, LocalDate first, Optional<LocalDate> last) {
    public boolean includes(LocalDate day) {
        return !day.isBefore(first) && last.filter(day::isAfter).isEmpty() && cadence.isDue(first, day);
    }

    /** The last due day up to and with a day. */
    public Optional<LocalDate> newestUntil(LocalDate day) {
        LocalDate end = last.filter(day::isAfter).orElse(day);
        return IntStream.range(0, cadence.span())
                .mapToObj(end::minusDays)
                .filter(this::includes)
                .findFirst();
    }

    /** The first due day after a day. */
    public Optional<LocalDate> nextAfter(LocalDate day) {
        LocalDate begin = day.isBefore(first) ? first : day.plusDays(1);
        return IntStream.range(0, cadence.span())
                .mapToObj(begin::plusDays)
                .filter(this::includes)
                .findFirst();
    }

    /** The due days from one day to another, both included, newest first. */
    public List<LocalDate> between(LocalDate from, LocalDate to) {
        return IntStream.rangeClosed(0, Math.toIntExact(from.until(to, ChronoUnit.DAYS)))
                .mapToObj(to::minusDays)
                .filter(this::includes)
                .toList();
    }
}
