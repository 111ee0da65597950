package dapple.comparison;

import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.PointFacts;
import java.util.Optional;

/**
 * A point at which meters may be compared.
 *
 * @param amount what was read there last; empty: nothing of late
 */
record Candidate(EnclosureFacts enclosure, PointFacts point, Optional<Double> amount) {
    long enclosureId() {
        return enclosure.id();
    }

    long roomId() {
        return enclosure.roomId();
    }
}
