package dapple.reading;

import dapple.enclosure.Served;
import java.util.Collection;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Which species and which single animals a point serves; none ticked for all that live there.
 *
 * @param seen what was ticked when the form was made
 */
record ServesForm(
        @Nullable String seen,
        @Nullable Set<Long> species,
        @Nullable Set<Long> animals) {

    static ServesForm of(Served served) {
        return new ServesForm(text(served), served.speciesIds(), served.animalIds());
    }

    Served chosen() {
        return new Served(species == null ? Set.of() : species, animals == null ? Set.of() : animals);
    }

    boolean isMadeFrom(Served served) {
        return text(served).equals(seen);
    }

    private static String text(Served served) {
        return text(served.speciesIds()) + "/" + text(served.animalIds());
    }

    private static String text(Collection<Long> ids) {
        return new TreeSet<>(ids).stream().map(String::valueOf).collect(Collectors.joining(" "));
    }

    ServesForm on(Served served) {
        return new ServesForm(text(served), chosen().speciesIds(), chosen().animalIds());
    }
}
