package dapple.order;

import dapple.light.judging.Limits;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;

/**
 * A vet's order for one animal or group, over [from, to).
 *
 * @param lastDay as ordered, in the time of the site
 * @param to after its last day, or when it was ended before
 * @param inheritedFrom the order of the group that the animal left
 */
public record OrderFacts(
        long id,
        long animalId,
        Ordered ordered,
        String reason,
        Instant from,
        LocalDate lastDay,
        Instant to,
        long personId,
        Instant recordedAt,
        Optional<Long> inheritedFrom,
        Optional<EarlyEnd> earlyEnd) {

    public boolean isInForceAt(Instant at) {
        return !at.isBefore(from) && at.isBefore(to);
    }

    /** Whether it is in force at an instant or begins later; one that was ended before it began never does. */
    public boolean isOpenAt(Instant at) {
        return from.isBefore(to) && at.isBefore(to);
    }

    /** What lies of it before an instant. */
    Optional<OrderFacts> before(Instant end) {
        if (!from.isBefore(end)) {
            return Optional.empty();
        }
        return to.isAfter(end)
                ? Optional.of(new OrderFacts(
                        id,
                        animalId,
                        ordered,
                        reason,
                        from,
                        lastDay,
                        end,
                        personId,
                        recordedAt,
                        inheritedFrom,
                        earlyEnd))
                : Optional.of(this);
    }

    /** What readings of the UV index at the animal are judged by, given what its species needs. */
    public Limits limits(Optional<Limits> ofSpecies) {
        return ordered.limits(ofSpecies);
    }

    /**
     * That it did not last until its last day.
     *
     * @param followedBy the order that took its place; none: a vet ended it
     */
    public record EarlyEnd(Instant recordedAt, long personId, String reason, Optional<Long> followedBy) {}
}
