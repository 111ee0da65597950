package dapple.enclosure;

import java.time.Instant;
import java.util.Optional;

/** An enclosure as those see it who arrange it, with the version that they change. */
public record EnclosureDetails(long id, long version, EnclosureChange state, String room, Optional<Instant> retiredAt) {
    public boolean isInUse() {
        return retiredAt.isEmpty();
    }
}
