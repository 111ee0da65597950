package dapple.rig;

import dapple.light.dose.Span;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Optional;

/**
 * A timer that switches at two local times each day: on at the one, off at the other, of the next day if that is earlier.
 * Twice the same time: on day and night.
 */
public record DailyTimer(LocalTime on, LocalTime off) implements LampTimer {
    private static final int MINUTES = 60;
    private static final int MINUTES_OF_A_DAY = 24 * MINUTES;

    static DailyTimer ofMinutes(int on, int off) {
        return new DailyTimer(LocalTime.MIN.plusMinutes(on), LocalTime.MIN.plusMinutes(off));
    }

    static int minutes(LocalTime time) {
        return time.getHour() * MINUTES + time.getMinute();
    }

    public boolean isAlwaysOn() {
        return on.equals(off);
    }

    /** From switching on to switching off by the clock, 1 to 1440 min. */
    public int litMinutes() {
        int minutes = Math.floorMod(minutes(off) - minutes(on), MINUTES_OF_A_DAY);
        return minutes == 0 ? MINUTES_OF_A_DAY : minutes;
    }

    @Override
    public Optional<DailyTimer> timesOf(LocalDate day) {
        return Optional.of(this);
    }

    @Override
    public Optional<Instant> onSince(Instant at, ZoneId zone) {
        return isAlwaysOn() ? Optional.of(Instant.MIN) : LampTimer.super.onSince(at, zone);
    }

    /** From when until when it is on by the times of one day; empty where the clock leaves all of it out. */
    Optional<Span> span(LocalDate day, ZoneId zone) {
        if (isAlwaysOn()) {
            return Optional.of(Span.of(day, zone));
        }
        LocalDate ends = off.isAfter(on) ? day : day.plusDays(1);
        Instant start = LocalDateTime.of(day, on).atZone(zone).toInstant();
        Instant end = LocalDateTime.of(ends, off).atZone(zone).toInstant();
        return end.isAfter(start) ? Optional.of(new Span(start, end)) : Optional.empty();
    }
}
