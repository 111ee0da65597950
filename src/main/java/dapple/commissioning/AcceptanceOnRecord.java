package dapple.commissioning;

import dapple.light.quantity.Quantity;
import java.time.Instant;
import java.util.List;

/**
 * That a rig was accepted, with the readings that it was accepted on.
 *
 * @param acceptedBy by name
 * @param ownReadings whether who accepted had taken all of them, at a site of one person
 */
public record AcceptanceOnRecord(
        String reason, boolean ownReadings, Instant acceptedAt, String acceptedBy, List<OnReading> readings) {
    public AcceptanceOnRecord {
        readings = List.copyOf(readings);
    }

    /** One of the readings, as the meter showed it. */
    public record OnReading(
            long readingId, String point, Quantity quantity, double amount, Instant takenAt, String meter) {}
}
