package dapple.demo;

import dapple.meter.MeterFacts;
import dapple.reading.SheetReading;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.Optional;

/** What a meter shows of an amount, and who reads it there. */
record DemoShown(MeterFacts meter, Optional<String> takenBy) {
    /** By the keeper. */
    static DemoShown by(MeterFacts meter) {
        return new DemoShown(meter, Optional.empty());
    }

    SheetReading of(double amount, DemoHouse.Place place, Instant at) {
        return new SheetReading(
                place.point().enclosureId(),
                place.point().id(),
                meter.id(),
                rounded(amount, meter.uncertainty().resolution()),
                at,
                false,
                takenBy);
    }

    /** To the smallest step of a display, and never below nothing. */
    static double rounded(double amount, double step) {
        return BigDecimal.valueOf(Math.round(Math.max(0, amount) / step))
                .multiply(BigDecimal.valueOf(step))
                .doubleValue();
    }
}
