package dapple.order;

import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;

/** Two who would live together though no basking place could suit both. */
public record NeedsConflict(Needs one, Needs other) {

    /** Between each of some and each of others. */
    public static List<NeedsConflict> between(Collection<Needs> some, Collection<Needs> others) {
        return some.stream()
                .flatMap(one -> others.stream()
                        .filter(other -> one.animal().id() != other.animal().id())
                        .filter(one::conflictsWith)
                        .map(other -> new NeedsConflict(one, other)))
                .toList();
    }

    /** Names these conflicts in a form, so that only those that were shown are acknowledged. */
    public static String key(List<NeedsConflict> conflicts) {
        return conflicts.stream()
                .map(conflict -> conflict.one().animal().id() + "-"
                        + conflict.other().animal().id())
                .sorted()
                .collect(Collectors.joining("."));
    }
}
