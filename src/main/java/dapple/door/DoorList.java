package dapple.door;

import dapple.enclosure.EnclosureFacts;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The doors of a site.
 *
 * @param inUse the enclosures in walking order
 * @param codes the codes that count, by enclosure
 */
record DoorList(List<EnclosureFacts> inUse, Map<Long, DoorFacts> codes) {

    /** The labels of some enclosures; those without a code have none. */
    List<Label> labels(List<EnclosureFacts> wanted, BaseAddress base) {
        return wanted.stream().flatMap(one -> label(one, base).stream()).toList();
    }

    private Optional<Label> label(EnclosureFacts enclosure, BaseAddress base) {
        return Optional.ofNullable(codes.get(enclosure.id()))
                .map(door -> new Label(enclosure.code(), enclosure.room(), door.code(), base.of(door.code())));
    }
}
