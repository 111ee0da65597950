package dapple.reading;

import dapple.light.quantity.Quantity;

/** What one row of newest readings is of. */
record Read(long siteId, long pointId, Quantity quantity) {
    static Read of(Reading reading) {
        return new Read(reading.siteId(), reading.pointId(), reading.quantity());
    }
}
