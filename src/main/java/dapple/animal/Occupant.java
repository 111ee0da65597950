package dapple.animal;

import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Who lives in an enclosure, with what its light is planned by.
 *
 * @param length the newest of the body
 */
public record Occupant(AnimalFacts animal, String scientificName, Reach reach, Optional<BodyLengthFacts> length) {
    /** Of what the query names. */
    Occupant(Animal animal, String scientificName, @Nullable Double metres, @Nullable LocalDate measuredOn) {
        this(animal.facts(), scientificName, animal.reach(), length(metres, measuredOn));
    }

    private static Optional<BodyLengthFacts> length(@Nullable Double metres, @Nullable LocalDate measuredOn) {
        return metres == null || measuredOn == null
                ? Optional.empty()
                : Optional.of(new BodyLengthFacts(metres, measuredOn));
    }

    public long id() {
        return animal.id();
    }
}
