package dapple.reading;

import dapple.light.judging.Limits;
import dapple.light.quantity.Quantity;
import java.util.Map;
import java.util.Optional;

/**
 * What readings at a point are judged by at an instant, for one species that lives there.
 *
 * @param targetId the target version in force, if there is one
 * @param orderId the vet's order that changes the target's limits, if there is one
 * @param limits by quantity; what is missing is not asked for
 */
record Need(long speciesId, Optional<Long> targetId, Optional<Long> orderId, Map<Quantity, Limits> limits) {}
