package dapple.importing;

import dapple.light.quantity.Quantity;
import java.time.Instant;
import java.util.Optional;

/**
 * A reading as a row says it.
 *
 * @param enclosure key of the enclosure
 * @param point key of the point
 * @param meter key of the meter that the row names
 */
record SaidReading(
        String enclosure,
        String point,
        Quantity quantity,
        double amount,
        Instant at,
        boolean dayOnly,
        Optional<String> meter,
        Optional<String> by) {}
