package dapple.enclosure;

import java.time.Instant;
import java.util.Optional;

/** A measuring point as those see it who arrange it, with the version that they change. */
public record PointDetails(PointFacts facts, long version, int walkingOrder, Optional<Instant> retiredAt) {
    public boolean isInUse() {
        return retiredAt.isEmpty();
    }
}
