package dapple.animal;

import java.time.Instant;
import java.util.Optional;
import java.util.stream.Stream;

/** A stay as other features see it, over [from, to). */
public record StayFacts(long id, long enclosureId, AnimalFacts animal, Instant from, Optional<Instant> to) {

    public boolean holds(Instant at) {
        return !at.isBefore(from) && to.filter(end -> !at.isBefore(end)).isEmpty();
    }

    /** What lies of it before an instant. */
    Optional<StayFacts> before(Instant end) {
        if (!from.isBefore(end)) {
            return Optional.empty();
        }
        Instant earlier = Stream.concat(to.stream(), Stream.of(end))
                .min(Instant::compareTo)
                .orElse(end);
        return Optional.of(new StayFacts(id, enclosureId, animal, from, Optional.of(earlier)));
    }
}
