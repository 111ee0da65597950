package dapple.comparison;

import dapple.light.quantity.Quantity;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * Meters that are, or were, compared.
 *
 * @param endedAt empty: it is under way
 * @param broken empty: it is under way, or it ended by itself when it was complete
 * @param pointIds in the order in which they are read
 */
public record ComparisonFacts(
        long id,
        long siteId,
        Quantity quantity,
        Instant begunAt,
        long begunBy,
        Optional<Instant> endedAt,
        Optional<Broken> broken,
        List<Long> meterIds,
        List<Long> pointIds) {
    public ComparisonFacts {
        meterIds = List.copyOf(meterIds);
        pointIds = List.copyOf(pointIds);
    }

    /** When, by whom and why it was ended before it was complete. */
    public record Broken(Instant at, long personId, String reason) {}

    public boolean isUnderWay() {
        return endedAt.isEmpty();
    }
}
