package dapple.reading;

import java.util.Collection;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Which species a point serves; none ticked for all that live there.
 *
 * @param seen what was ticked when the form was made
 */
record ServesForm(@Nullable String seen, @Nullable Set<Long> species) {

    static ServesForm of(Set<Long> serves) {
        return new ServesForm(text(serves), serves);
    }

    Set<Long> chosen() {
        return species == null ? Set.of() : species;
    }

    boolean isMadeFrom(Set<Long> serves) {
        return text(serves).equals(seen);
    }

    private static String text(Collection<Long> ids) {
        return new TreeSet<>(ids).stream().map(String::valueOf).collect(Collectors.joining(" "));
    }

    ServesForm on(Set<Long> serves) {
        return new ServesForm(text(serves), chosen());
    }
}
