package dapple.commissioning;

import dapple.light.quantity.Quantity;
import dapple.meter.MeterFacts;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** Readings of one lamp at several distances along its aim, facing back, with nothing between. */
record BenchEntry(UUID key, MeterFacts meter, Instant at, List<Row> rows, Optional<Double> wanted) {
    BenchEntry {
        rows = List.copyOf(rows);
    }

    Quantity quantity() {
        return meter.quantity();
    }

    /**
     * One reading.
     *
     * @param amount as the meter showed it
     */
    record Row(double distanceMetres, double amount) {}
}
