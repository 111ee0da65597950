package dapple.meter;

import dapple.light.metrology.Cause;
import dapple.light.metrology.UncertaintyBudget;
import java.time.Instant;
import java.util.List;

/**
 * The uncertainty of a meter by its parts.
 *
 * @param parts one or more, each of another cause
 */
public record BudgetFacts(long id, long meterId, List<UncertaintyPart> parts, Instant recordedAt, long recordedBy) {
    public BudgetFacts {
        parts = List.copyOf(parts);
    }

    /** Standard uncertainty of what is stated for repeats, a share of the reading; 0 where nothing is. */
    double repeatsShare() {
        return parts.stream()
                .filter(part -> part.cause() == Cause.REPEATS)
                .mapToDouble(part -> part.contribution().at(1))
                .findFirst()
                .orElse(0);
    }

    /** With the step of the display. */
    static UncertaintyBudget combined(List<UncertaintyPart> parts, double resolution) {
        return new UncertaintyBudget(
                parts.stream().map(UncertaintyPart::contribution).toList(), resolution);
    }
}
