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
 * @param borrowedUntil the last day that it may be kept; none: it is the site's own, or no day was agreed
 * @param range the lowest and the highest amount that it shows, where that is known
 * @param calibrationDue until which day its newest calibration holds; none: never calibrated
 */
public record MeterFacts(
        long id,
        String code,
        String description,
        Quantity quantity,
        MeterUncertainty uncertainty,
        boolean borrowed,
        Optional<LocalDate> borrowedUntil,
        Optional<MeterRange> range,
        Optional<LocalDate> calibrationDue) {

    /** Whether the meter can show an amount at all, as far as its range is known. */
    public boolean canShow(double displayed) {
        return range.filter(known -> !known.includes(displayed)).isEmpty();
    }

    public boolean isPastDue(Instant now, ZoneId zone) {
        return due(now, zone) == CalibrationDue.OVERDUE;
    }

    public CalibrationDue due(Instant now, ZoneId zone) {
        return CalibrationDue.of(calibrationDue, LocalDate.ofInstant(now, zone));
    }
}
