package dapple.reading;

import dapple.light.quantity.Quantity;
import java.time.Instant;

/**
 * One of the newest readings of a quantity at a point.
 *
 * @param amount corrected by the calibration in force, in the unit of the quantity
 */
public record RecentReading(long enclosureId, long pointId, Quantity quantity, double amount, Instant takenAt) {}
