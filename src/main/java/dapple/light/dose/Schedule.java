package dapple.light.dose;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * When a lamp is switched, by the site's clock: by which timers on which day. What the clock leaves out in spring is not lit,
 * what it shows twice in autumn is lit twice. A timer that keeps time of its own may be off by that change.
 */
@FunctionalInterface
public interface Schedule {
    /** The timers that begin on a day; none: the lamp stays off. */
    List<Timer> of(LocalDate day);

    /** When the lamp is on within a time, in order of the days on which it was switched on. */
    default List<Span> onTimes(Span during, ZoneId zone) {
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
                .flatMap(day -> of(day).stream().map(timer -> timer.onFrom(day, offset)))
                .flatMap(lit -> lit.meet(steady).stream());
    }
}
