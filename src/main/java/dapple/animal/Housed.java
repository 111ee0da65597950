package dapple.animal;

import dapple.species.SpeciesFacts;

/** Who is where. */
public record Housed(long enclosureId, AnimalFacts animal, SpeciesFacts species) {
    /** Of what the query names. */
    Housed(long enclosureId, Animal animal, long speciesId, String scientificName, String commonName, long version) {
        this(enclosureId, animal.facts(), new SpeciesFacts(speciesId, scientificName, commonName, version));
    }
}
