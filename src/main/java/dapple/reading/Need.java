package dapple.reading;

import dapple.enclosure.PointFacts;
import dapple.light.judging.Limits;
import dapple.light.quantity.Quantity;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What readings at a point are judged by at an instant, for one species that lives there.
 *
 * @param animalIds those of the species who need this and whom the point serves; at least one
 * @param targetId the target version in force, if there is one
 * @param orderId the vet's order that changes the target's limits, if there is one
 * @param limits by quantity; what is missing is not asked for
 */
record Need(
        long speciesId,
        Set<Long> animalIds,
        Optional<Long> targetId,
        Optional<Long> orderId,
        Map<Quantity, Limits> limits) {

    /** Whether a point serves any of them. */
    boolean isServedAt(PointFacts point) {
        return animalIds.stream().anyMatch(animal -> point.serves(speciesId, animal));
    }
}
