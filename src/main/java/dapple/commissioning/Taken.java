package dapple.commissioning;

import dapple.enclosure.PointFacts;
import dapple.light.quantity.Quantity;
import dapple.meter.MeterFacts;
import dapple.reading.JudgedReading;

/** A reading that a rig is held against, with where and by what it was taken. */
public record Taken(JudgedReading reading, PointFacts point, MeterFacts meter) {
    Quantity quantity() {
        return reading.quantity();
    }
}
