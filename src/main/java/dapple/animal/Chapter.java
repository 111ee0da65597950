package dapple.animal;

import dapple.species.SpeciesFacts;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** An animal with one of its stays; none if it has been nowhere. */
record Chapter(Animal animal, SpeciesFacts species, Optional<Stay> stay) {
    /** Of what the query names. */
    Chapter(
            Animal animal,
            long speciesId,
            String scientificName,
            String commonName,
            long version,
            @Nullable Stay stay) {
        this(animal, new SpeciesFacts(speciesId, scientificName, commonName, version), Optional.ofNullable(stay));
    }
}
