package dapple.animal;

import java.util.Optional;

/**
 * Withdraws a stay.
 *
 * @param enclosureId where it was instead over the same time; none: it was not moved at all
 */
public record StayCorrection(long animalId, long stayId, Optional<Long> enclosureId, String reason, long personId) {}
