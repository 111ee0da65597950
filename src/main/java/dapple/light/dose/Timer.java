package dapple.light.dose;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Switches a lamp by the site's clock: on while the clock shows a time from on until before off, past midnight where off
 * is the earlier. What the clock leaves out in spring is not lit, what it shows twice in autumn is lit twice. A timer that
 * keeps time of its own may be off by that change.
 *
 * @param off other than on
 */
public record Timer(LocalTime on, LocalTime off) {
    public Timer {
        if (on.equals(off)) {
            throw new IllegalArgumentException("a timer must go off at another time than " + on);
        }
    }

    /** When the lamp is on within a time, in order. */
    List<Span> onTimes(Span during, ZoneId zone) {
        return betweenClockChanges(during, zone).stream()
                .flatMap(steady -> onTimes(steady, zone.getRules().getOffset(steady.from())))
                .toList();
    }

    private static List<Span> betweenClockChanges(Span during, ZoneId zone) {
        List<Span> steady = new ArrayList<>();
        Instant from = during.from();
        var change = zone.getRules().nextTransition(from);
        while (change != null && change.getInstant().isBefore(during.to())) {
            steady.add(new Span(from, change.getInstant()));
            from = change.getInstant();
            change = zone.getRules().nextTransition(from);
        }
        steady.add(new Span(from, during.to()));
        return steady;
    }

    private Stream<Span> onTimes(Span steady, ZoneOffset offset) {
        LocalDate first = LocalDateTime.ofInstant(steady.from(), offset).toLocalDate();
        LocalDate last = LocalDateTime.ofInstant(steady.to(), offset).toLocalDate();
        return first.minusDays(1)
                .datesUntil(last.plusDays(1))
                .map(day -> onFrom(day, offset))
                .flatMap(lit -> lit.meet(steady).stream());
    }

    private Span onFrom(LocalDate day, ZoneOffset offset) {
        LocalDate end = off.isAfter(on) ? day : day.plusDays(1);
        return new Span(day.atTime(on).toInstant(offset), end.atTime(off).toInstant(offset));
    }
}
