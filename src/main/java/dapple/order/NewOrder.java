package dapple.order;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;

/**
 * An order to place.
 *
 * @param from a later instant; none: now
 * @param key made with the form, so that one that is posted twice is stored once
 */
public record NewOrder(
        long animalId,
        Ordered ordered,
        String reason,
        Optional<Instant> from,
        LocalDate lastDay,
        UUID key,
        long personId) {}
