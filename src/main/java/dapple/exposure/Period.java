package dapple.exposure;

import dapple.light.dose.Span;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;

/**
 * Local days of a site.
 *
 * @param to last day, not before the first
 */
public record Period(LocalDate from, LocalDate to) {
    public Period {
        if (to.isBefore(from)) {
            throw new IllegalArgumentException("a period must not end before " + from + ", ended " + to);
        }
    }

    /** The day after the last. */
    public LocalDate until() {
        return to.plusDays(1);
    }

    public int days() {
        return Math.toIntExact(ChronoUnit.DAYS.between(from, until()));
    }

    Period widened(int days) {
        return new Period(from.minusDays(days), to.plusDays(days));
    }

    Span span(ZoneId zone) {
        return new Span(
                from.atStartOfDay(zone).toInstant(), until().atStartOfDay(zone).toInstant());
    }
}
