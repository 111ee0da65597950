package dapple.light.dose;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.List;

/**
 * Switches a lamp by the site's clock, the same every day: on while the clock shows a time from on until before off, past
 * midnight where off is the earlier.
 *
 * @param off other than on
 */
public record Timer(LocalTime on, LocalTime off) implements Schedule {
    public Timer {
        if (on.equals(off)) {
            throw new IllegalArgumentException("a timer must go off at another time than " + on);
        }
    }

    @Override
    public List<Timer> of(LocalDate day) {
        return List.of(this);
    }

    Span onFrom(LocalDate day, ZoneOffset offset) {
        LocalDate end = off.isAfter(on) ? day : day.plusDays(1);
        return new Span(day.atTime(on).toInstant(offset), end.atTime(off).toInstant(offset));
    }
}
