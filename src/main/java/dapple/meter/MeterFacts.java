package dapple.meter;

import dapple.light.judging.MeterUncertainty;
import dapple.light.quantity.Quantity;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

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

    /**
     * Of the columns of a meter, in the order in which the queries name them.
     *
     * @param budgetShare by the budget that stands
     * @param statedShare by whoever made it
     */
    MeterFacts(
            long id,
            String code,
            String description,
            Quantity quantity,
            double resolution,
            @Nullable Double budgetShare,
            @Nullable Double statedShare,
            @Nullable String lender,
            @Nullable LocalDate borrowedUntil,
            @Nullable Double rangeLow,
            @Nullable Double rangeHigh,
            @Nullable LocalDate calibrationDueOn) {
        this(
                id,
                code,
                description,
                quantity,
                Optional.ofNullable(budgetShare)
                        .or(() -> Optional.ofNullable(statedShare))
                        .map(share -> new MeterUncertainty(share, resolution))
                        .orElseGet(() -> MeterUncertainty.of(quantity, resolution)),
                lender != null,
                Optional.ofNullable(borrowedUntil),
                MeterRange.of(rangeLow, rangeHigh),
                Optional.ofNullable(calibrationDueOn));
    }

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
