package dapple.meter;

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

    /** With the step of the display. */
    static UncertaintyBudget combined(List<UncertaintyPart> parts, double resolution) {
        return new UncertaintyBudget(
                parts.stream().map(UncertaintyPart::contribution).toList(), resolution);
    }
}
