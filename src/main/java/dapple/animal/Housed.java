package dapple.animal;

import dapple.species.SpeciesFacts;
import java.time.Instant;

/**
 * Who is where.
 *
 * @param from since when
 */
public record Housed(long enclosureId, Instant from, AnimalFacts animal, SpeciesFacts species) {
    /** Of what the query names. */
    Housed(
            long enclosureId,
            Instant from,
            Animal animal,
            long speciesId,
            String scientificName,
            String commonName,
            long version) {
        this(enclosureId, from, animal.facts(), new SpeciesFacts(speciesId, scientificName, commonName, version));
    }
}
