package dapple.light.dose;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;

/**
 * A time with its beginning and without its end.
 *
 * @param to later than from; {@link Instant#MAX} for a time that has not ended
 */
public record Span(Instant from, Instant to) {
    public Span {
        if (!from.isBefore(to)) {
            throw new IllegalArgumentException("a span must end after " + from + ", ended " + to);
        }
    }

    /** A time that has not ended. */
    public static Span since(Instant from) {
        return new Span(from, Instant.MAX);
    }

    /** A local day: 23, 24 or 25 hours where clocks change. */
    public static Span of(LocalDate day, ZoneId zone) {
        return new Span(
                day.atStartOfDay(zone).toInstant(),
                day.plusDays(1).atStartOfDay(zone).toInstant());
    }

    public boolean contains(Instant at) {
        return !at.isBefore(from) && at.isBefore(to);
    }

    public Duration length() {
        return Duration.between(from, to);
    }

    /** What both have in common. */
    public Optional<Span> meet(Span other) {
        Instant later = from.isAfter(other.from) ? from : other.from;
        Instant earlier = to.isBefore(other.to) ? to : other.to;
        return later.isBefore(earlier) ? Optional.of(new Span(later, earlier)) : Optional.empty();
    }
}
