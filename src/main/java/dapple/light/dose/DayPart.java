package dapple.light.dose;

import dapple.light.judging.MeasuredAmount;
import dapple.light.quantity.ErythemalDose;
import dapple.light.quantity.UvIndex;
import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A day, or as much of it as lies in one spell.
 *
 * @param lit how long at least one ultraviolet lamp was on; none where that is not known
 */
public record DayPart(
        Span during,
        Circumstance circumstance,
        UvIndexOfDay basking,
        UvIndexOfDay gradient,
        UvIndexOfDay shade,
        DayJudgement judgement,
        Optional<Duration> lit) {
    public Certainty certainty() {
        return switch (circumstance) {
            case PLANNED_OFF -> Certainty.PLANNED_OFF;
            case NOWHERE -> Certainty.UNKNOWN;
            case UNDER_LAMPS -> certainty(List.of(basking, shade));
        };
    }

    private static Certainty certainty(List<UvIndexOfDay> places) {
        if (places.stream().anyMatch(UvIndexOfDay.Unknown.class::isInstance)) {
            return Certainty.UNKNOWN;
        }
        boolean isCarried = places.stream().anyMatch(UvIndexOfDay.Carried.class::isInstance);
        return isCarried ? Certainty.CARRIED : Certainty.MEASURED;
    }

    /** Whether the lamps are known to have been off by their timers all the while. */
    boolean isDark() {
        return circumstance == Circumstance.UNDER_LAMPS
                && lit.filter(Duration::isZero).isPresent();
    }

    /**
     * The dose available in this part.
     *
     * @param baskingShare share of the lit time at the basking place, 0 to 1
     */
    DoseOfDay dose(double baskingShare) {
        return switch (circumstance) {
            case PLANNED_OFF -> new DoseOfDay.Known(DoseRange.NONE);
            case NOWHERE -> new DoseOfDay.Unknown(DoseOfDay.Missing.STAY);
            case UNDER_LAMPS ->
                lit.map(time -> underLamps(time, baskingShare))
                        .orElseGet(() -> new DoseOfDay.Unknown(DoseOfDay.Missing.TIMER));
        };
    }

    private DoseOfDay underLamps(Duration time, double baskingShare) {
        if (basking.index().isEmpty()) {
            return new DoseOfDay.Unknown(DoseOfDay.Missing.BASKING_INDEX);
        }
        if (shade.index().isEmpty()) {
            return new DoseOfDay.Unknown(DoseOfDay.Missing.SHADE_INDEX);
        }
        return new DoseOfDay.Known(range(basking.index().get(), shade.index().get(), time, baskingShare));
    }

    /** Where readings are out of order, as 0.2 in shade and 0.1 basking, the range is from the least to the most. */
    private DoseRange range(MeasuredAmount bright, MeasuredAmount dark, Duration time, double baskingShare) {
        Comparator<MeasuredAmount> byAmount = Comparator.comparingDouble(MeasuredAmount::amount);
        List<MeasuredAmount> sorted = Stream.concat(Stream.of(dark, bright), gradient.index().stream())
                .sorted(byAmount)
                .toList();
        MeasuredAmount least = sorted.get(0);
        MeasuredAmount most = sorted.get(sorted.size() - 1);
        double rest = gradient.index().map(MeasuredAmount::amount).orElse((bright.amount() + dark.amount()) / 2);
        double mean = baskingShare * bright.amount() + (1 - baskingShare) * rest;
        double inRange = Math.max(least.amount(), Math.min(mean, most.amount()));
        return new DoseRange(
                dose(least.interval().low(), time),
                dose(least.amount(), time),
                dose(inRange, time),
                dose(most.amount(), time),
                dose(most.interval().high(), time));
    }

    private static ErythemalDose dose(double index, Duration time) {
        return ErythemalDose.of(new UvIndex(index), time);
    }
}
