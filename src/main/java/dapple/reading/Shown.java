package dapple.reading;

import dapple.light.quantity.Quantity;
import java.time.Instant;

/**
 * What a meter showed at a point, as it is judged.
 *
 * @param id of the reading
 * @param heldAsAsked whether the sensor was held as the point says; if not, it is context
 */
record Shown(
        long id, long pointId, long meterId, Quantity quantity, double amount, boolean heldAsAsked, Instant takenAt) {}
