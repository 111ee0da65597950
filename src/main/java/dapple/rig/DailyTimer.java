package dapple.rig;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A timer that switches at two local times each day: on at the one, off at the other, of the next day if that is earlier.
 * Twice the same time: on day and night.
 */
public record DailyTimer(LocalTime on, LocalTime off) {
    private static final int MINUTES = 60;

    static DailyTimer ofMinutes(int on, int off) {
        return new DailyTimer(LocalTime.MIN.plusMinutes(on), LocalTime.MIN.plusMinutes(off));
    }

    static int minutes(LocalTime time) {
        return time.getHour() * MINUTES + time.getMinute();
    }

    public boolean isAlwaysOn() {
        return on.equals(off);
    }

    /** How long it is on over [from, to): by local days, so that one of 23 or 25 hours counts as that. */
    public Duration onWithin(Instant from, Instant to, ZoneId zone) {
        if (isAlwaysOn()) {
            return Duration.between(from, to);
        }
        Duration sum = Duration.ZERO;
        LocalDate last = to.atZone(zone).toLocalDate();
        for (LocalDate day = from.atZone(zone).toLocalDate().minusDays(1); !day.isAfter(last); day = day.plusDays(1)) {
            sum = sum.plus(common(from, to, start(day, zone), end(day, zone)));
        }
        return sum;
    }

    /** When it was switched on last, if it is on at an instant; one that is always on was so since ever. */
    public Optional<Instant> onSince(Instant at, ZoneId zone) {
        if (isAlwaysOn()) {
            return Optional.of(Instant.MIN);
        }
        LocalDate today = at.atZone(zone).toLocalDate();
        return Stream.of(today, today.minusDays(1))
                .filter(day -> !start(day, zone).isAfter(at) && end(day, zone).isAfter(at))
                .map(day -> start(day, zone))
                .findFirst();
    }

    /** Since when a lamp on it that hangs since an instant has burnt without a break, if it is on at another. */
    public Optional<Instant> burningSince(Instant hung, Instant at, ZoneId zone) {
        return onSince(at, zone).map(on -> on.isBefore(hung) ? hung : on);
    }

    private Instant start(LocalDate day, ZoneId zone) {
        return LocalDateTime.of(day, on).atZone(zone).toInstant();
    }

    private Instant end(LocalDate day, ZoneId zone) {
        LocalDate ends = off.isAfter(on) ? day : day.plusDays(1);
        return LocalDateTime.of(ends, off).atZone(zone).toInstant();
    }

    private static Duration common(Instant from, Instant to, Instant start, Instant end) {
        Instant begins = start.isAfter(from) ? start : from;
        Instant ends = end.isBefore(to) ? end : to;
        return ends.isAfter(begins) ? Duration.between(begins, ends) : Duration.ZERO;
    }
}
