package dapple.animal;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * An animal or a group with everything that is said of it.
 *
 * @param lengths newest first
 * @param startsAt since when the record holds; none: one animal, since ever
 * @param splitFrom the group that it left when the record began
 * @param end why and since when the record is closed
 */
public record AnimalDetails(
        AnimalFacts facts,
        long version,
        AnimalState state,
        List<BodyLengthFacts> lengths,
        Optional<Instant> startsAt,
        Optional<Long> splitFrom,
        Optional<RecordEnd> end) {

    public long id() {
        return facts.id();
    }

    public boolean isGroup() {
        return facts.isGroup();
    }

    /** Whether the record is open: the animal is here. */
    public boolean isHere() {
        return end.isEmpty();
    }

    public Optional<BodyLengthFacts> length() {
        return lengths.stream().findFirst();
    }
}
