package dapple.meter;

import dapple.light.judging.MeterUncertainty;
import dapple.light.quantity.Quantity;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;

/**
 * A meter as readings need it.
 *
 * @param calibrationDue until which day its newest calibration holds; none: never calibrated
 */
public record MeterFacts(
        long id,
        String code,
        String description,
        Quantity quantity,
        MeterUncertainty uncertainty,
        boolean borrowed,
        Optional<LocalDate> calibrationDue) {

    public boolean isPastDue(Instant now, ZoneId zone) {
        return due(now, zone) == CalibrationDue.OVERDUE;
    }

    public CalibrationDue due(Instant now, ZoneId zone) {
        return CalibrationDue.of(calibrationDue, LocalDate.ofInstant(now, zone));
    }
}
