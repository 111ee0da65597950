package dapple.desk;

import dapple.enclosure.PointFacts;
import dapple.light.quantity.Quantity;
import dapple.reading.JudgedReading;
import java.util.List;
import java.util.Optional;

/** The newest reading of each quantity at each point of an enclosure. */
public record Newest(List<JudgedReading> readings) {
    public Newest {
        readings = List.copyOf(readings);
    }

    public Optional<JudgedReading> at(PointFacts point, Quantity quantity) {
        return readings.stream()
                .filter(reading -> reading.pointId() == point.id() && reading.quantity() == quantity)
                .findFirst();
    }
}
