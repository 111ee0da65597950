package dapple.rig;

import dapple.light.dose.Span;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;
import java.util.stream.Stream;

/** Switches a lamp at local times: the same every day, by month, or as the day of the latitude that a species is from. */
public sealed interface LampTimer permits DailyTimer, MonthlyTimer, HomeDayTimer {
    /** How many days before one are looked at for when a lamp that is on was switched on. */
    int MOST_DAYS = 366;

    /** When it switches on and off on a day; empty: it stays off. */
    Optional<DailyTimer> timesOf(LocalDate day);

    /** How long it is on over [from, to): by local days, so that one of 23 or 25 hours counts as that. */
    default Duration onWithin(Instant from, Instant to, ZoneId zone) {
        Duration sum = Duration.ZERO;
        Instant reached = from;
        LocalDate last = to.atZone(zone).toLocalDate();
        for (LocalDate day = from.atZone(zone).toLocalDate().minusDays(1); !day.isAfter(last); day = day.plusDays(1)) {
            Optional<Span> lit = lit(day, zone).filter(span -> span.from().isBefore(to));
            Instant begins = later(lit.map(Span::from).orElse(to), reached);
            Instant ends = lit.map(Span::to).filter(to::isAfter).orElse(to);
            if (lit.isPresent() && ends.isAfter(begins)) {
                sum = sum.plus(Duration.between(begins, ends));
                reached = ends;
            }
        }
        return sum;
    }

    /** When it was switched on last, if it is on at an instant; looked for over a year. */
    default Optional<Instant> onSince(Instant at, ZoneId zone) {
        LocalDate today = at.atZone(zone).toLocalDate();
        return Stream.of(today, today.minusDays(1))
                .flatMap(
                        day -> lit(day, zone)
                                .filter(span -> span.contains(at))
                                .map(span -> begun(day, span.from(), zone))
                                .stream())
                .findFirst();
    }

    /** Since when a lamp on it that hangs since an instant has burnt without a break, if it is on at another. */
    default Optional<Instant> burningSince(Instant hung, Instant at, ZoneId zone) {
        return onSince(at, zone).map(on -> later(on, hung));
    }

    /** Where the times of a day go on from those of the day before, it was on before. */
    private Instant begun(LocalDate day, Instant start, ZoneId zone) {
        Instant begun = start;
        for (LocalDate before = day.minusDays(1);
                before.isAfter(day.minusDays(MOST_DAYS));
                before = before.minusDays(1)) {
            Instant reached = begun;
            Optional<Span> lit = lit(before, zone)
                    .filter(span -> span.from().isBefore(reached) && !span.to().isBefore(reached));
            if (lit.isEmpty()) {
                return begun;
            }
            begun = lit.get().from();
        }
        return begun;
    }

    /** From when until when a day's times light the lamp; the end may lie on the next day. */
    default Optional<Span> lit(LocalDate day, ZoneId zone) {
        return timesOf(day).flatMap(times -> times.span(day, zone));
    }

    private static Instant later(Instant one, Instant other) {
        return one.isAfter(other) ? one : other;
    }
}
