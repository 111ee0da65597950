package dapple.meter;

import dapple.light.metrology.UncertaintyBudget;
import java.time.Instant;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;

/**
 * A meter with all calibrations that hold.
 *
 * @param calibrations by the instant from which on each is in force
 * @param budget its uncertainty by parts, where that is stated
 */
public record MeterPast(
        MeterFacts meter, NavigableMap<Instant, CalibrationInForce> calibrations, Optional<UncertaintyBudget> budget) {
    /** The calibration in force at an instant, if it had been calibrated before. */
    public Optional<CalibrationInForce> calibrationAt(Instant at) {
        return Optional.ofNullable(calibrations.floorEntry(at)).map(Map.Entry::getValue);
    }
}
