package dapple.walk;

import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.PointFacts;
import dapple.light.quantity.Quantity;
import java.util.List;
import java.util.Set;
import java.util.UUID;

/**
 * An enclosure that is walked to, as its visit stands.
 *
 * @param asked what there is to read, in walking order
 * @param done what of it was read, or noted, before
 */
record StopNow(EnclosureFacts enclosure, UUID visitKey, List<Asked> asked, Set<Asked> done) {
    StopNow {
        asked = List.copyOf(asked);
        done = Set.copyOf(done);
    }

    /** A quantity at a point. */
    record Asked(PointFacts point, Quantity quantity) {}

    List<PointFacts> points() {
        return asked.stream().map(Asked::point).distinct().toList();
    }
}
