package dapple.target;

import java.util.Collection;
import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import java.util.function.BinaryOperator;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Some versions of targets.
 *
 * @param byId each by its id
 * @param newest the newest among them of each species
 */
public record TargetsKnown(Map<Long, Target> byId, Map<Long, Target> newest) {
    static TargetsKnown of(Collection<Target> targets) {
        return new TargetsKnown(
                targets.stream().collect(Collectors.toMap(Target::id, Function.identity())),
                targets.stream()
                        .collect(Collectors.toMap(
                                Target::speciesId,
                                Function.identity(),
                                BinaryOperator.maxBy(Comparator.comparingInt(Target::number)))));
    }

    /** The newest version for a species, if it is not the one that was used; none was where no id is given. */
    public Optional<Target> newerThan(Optional<Long> speciesId, Optional<Long> usedId) {
        return speciesId.map(newest::get).filter(target -> !usedId.equals(Optional.of(target.id())));
    }
}
