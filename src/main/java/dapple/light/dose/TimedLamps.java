package dapple.light.dose;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The ultraviolet lamps of an enclosure, or of all where an animal stayed, each over its time. */
public record TimedLamps(List<TimedLamp> lamps) {
    public TimedLamps {
        lamps = List.copyOf(lamps);
    }

    /**
     * How long at least one lamp was on, in time that really passed.
     *
     * @return none where no lamp is known, or where it is not known when one of them was on
     */
    public Optional<Duration> lit(Span during, ZoneId zone) {
        List<TimedLamp> there = lamps.stream()
                .filter(lamp -> lamp.during().meet(during).isPresent())
                .toList();
        if (there.isEmpty() || there.stream().anyMatch(lamp -> lamp.schedule().isEmpty())) {
            return Optional.empty();
        }
        return Optional.of(union(there.stream().flatMap(lamp -> onTimes(lamp, during, zone))));
    }

    private static Stream<Span> onTimes(TimedLamp lamp, Span during, ZoneId zone) {
        return Stream.of(lamp)
                .flatMap(one -> one.schedule().stream())
                .flatMap(schedule ->
                        lamp.during().meet(during).stream().flatMap(there -> schedule.onTimes(there, zone).stream()));
    }

    private static Duration union(Stream<Span> spans) {
        Duration lit = Duration.ZERO;
        Instant until = Instant.MIN;
        for (Span span : spans.sorted(Comparator.comparing(Span::from)).toList()) {
            Instant from = span.from().isAfter(until) ? span.from() : until;
            if (span.to().isAfter(from)) {
                lit = lit.plus(Duration.between(from, span.to()));
                until = span.to();
            }
        }
        return lit;
    }
}
