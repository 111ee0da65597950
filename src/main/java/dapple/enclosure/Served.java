package dapple.enclosure;

import java.util.Set;

/** Whom a measuring point serves: some species and some single animals; where neither is named, all that live there. */
public record Served(Set<Long> speciesIds, Set<Long> animalIds) {
    public static final Served ALL = new Served(Set.of(), Set.of());

    public Served {
        speciesIds = Set.copyOf(speciesIds);
        animalIds = Set.copyOf(animalIds);
    }

    public static Served species(Set<Long> ids) {
        return new Served(ids, Set.of());
    }

    public boolean isAll() {
        return speciesIds.isEmpty() && animalIds.isEmpty();
    }

    boolean holds(long speciesId, long animalId) {
        return isAll() || speciesIds.contains(speciesId) || animalIds.contains(animalId);
    }
}
