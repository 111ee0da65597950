package dapple.review;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What was decided since an instant.
 *
 * @param byEnclosure oldest first
 * @param names of those to whom something was given, by id
 */
record Decided(Map<Long, List<DecisionFacts>> byEnclosure, Map<Long, String> names) {
    static Decided of(List<Row> rows) {
        return new Decided(
                rows.stream().map(Row::decision).collect(Collectors.groupingBy(DecisionFacts::enclosureId)),
                rows.stream()
                        .filter(row -> row.name().isPresent())
                        .collect(Collectors.toMap(
                                row -> row.decision().givenTo().orElseThrow(),
                                row -> row.name().orElseThrow(),
                                (one, same) -> one)));
    }

    /** A decision, and the name of the one to whom it gives something. */
    record Row(DecisionFacts decision, Optional<String> name) {
        /** Of what the query names. */
        Row(Decision decision, @Nullable String name) {
            this(decision.facts(), Optional.ofNullable(name));
        }
    }
}
