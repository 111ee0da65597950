package dapple.light.judging;

import dapple.light.quantity.Quantity;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Judges the readings of one quantity in a visit together, since shade and gradient are relations between points. The
 * result does not depend on the order in which the points were read. Gradient and shade are rules for the UV index;
 * every other quantity has its own bands and ceiling alone.
 */
public final class VisitJudging {
    /** Brightest over darkest judged point below which a visit shows no gradient: 3 (common practice, no source). */
    public static final double LEAST_GRADIENT = 3;

    /** Readings are decimal: 0.6 is three times 0.2, though not to the last bit. */
    private static final double ROUNDING = 1e-9;

    private final Quantity quantity;
    private final List<PointReading> readings;
    private final Limits limits;

    private VisitJudging(Quantity quantity, List<PointReading> readings, Limits limits) {
        this.quantity = quantity;
        this.readings = readings;
        this.limits = limits;
    }

    /** One judgement for each reading of the UV index, by its key. */
    public static Map<Long, Judgement> judge(List<PointReading> readings, Limits limits) {
        return judge(Quantity.UV_INDEX, readings, limits);
    }

    /** One judgement for each reading, all of one quantity, by its key. */
    public static Map<Long, Judgement> judge(Quantity quantity, List<PointReading> readings, Limits limits) {
        return new VisitJudging(quantity, readings, limits).judgements();
    }

    private Map<Long, Judgement> judgements() {
        Map<Long, Judgement> found = new LinkedHashMap<>();
        readings.forEach(reading -> found.put(reading.key(), judged(reading)));
        shadeWithoutGradient()
                .ifPresent(shade -> found.computeIfPresent(shade.key(), (key, old) -> old.withoutGradient()));
        return found;
    }

    /** The safe side rules at a ceiling: a reading at or above it is over it, whatever its uncertainty (common practice). */
    private Judgement judged(PointReading reading) {
        if (reading.role() == PointRole.KEEPER) {
            return Judgement.none();
        }
        if (reading.measured().amount() >= limits.ceiling()) {
            return Judgement.of(State.OVER_CEILING);
        }
        Judgement byRole = judgedByRole(reading);
        boolean mayExceed = reading.measured().interval().high() > limits.ceiling();
        return mayExceed ? byRole.withPossibleExcess() : byRole;
    }

    private Judgement judgedByRole(PointReading reading) {
        return switch (reading.role()) {
            case BASKING -> inBand(reading, limits.basking());
            case SHADE -> asShade(inBand(reading, limits.shade()));
            case GRADIENT -> isUvIndex() ? betweenBaskingAndShade(reading) : underCeiling();
            case NEAREST_REACHABLE -> underCeiling();
            case KEEPER -> Judgement.none();
        };
    }

    private boolean isUvIndex() {
        return quantity == Quantity.UV_INDEX;
    }

    /** Where a ceiling is the only limit, what is not over it is on target; without one nothing is judged. */
    private Judgement underCeiling() {
        return limits.hasCeiling() ? Judgement.of(State.ON_TARGET) : Judgement.none();
    }

    private Judgement inBand(PointReading reading, Band band) {
        if (band.isOpen()) {
            return underCeiling();
        }
        Band.Found found = band.judge(reading.measured(), reading.meter());
        return new Judgement(Optional.of(found.state()), false, found.finerThanMeter(), false);
    }

    private Judgement asShade(Judgement judgement) {
        boolean bright = isUvIndex() && judgement.state().equals(Optional.of(State.TOO_STRONG));
        return bright
                ? new Judgement(Optional.of(State.NO_SHADE), false, judgement.finerThanMeter(), false)
                : judgement;
    }

    /** By value alone: one meter reads all three points, so that its error cancels between them. */
    private Judgement betweenBaskingAndShade(PointReading reading) {
        Optional<PointReading> basking = brightest(PointRole.BASKING);
        Optional<PointReading> shade = darkest(PointRole.SHADE);
        if (basking.isEmpty() || shade.isEmpty()) {
            return Judgement.none();
        }
        double low = Math.min(amount(shade.get()), amount(basking.get()));
        return Judgement.of(new Band(low, amount(basking.get())).byValue(amount(reading)));
    }

    /** The shade reading of a visit that has read both basking and shade and found no gradient among its points. */
    private Optional<PointReading> shadeWithoutGradient() {
        if (!isUvIndex() || brightest(PointRole.BASKING).isEmpty()) {
            return Optional.empty();
        }
        DoubleSummaryStatistics judged = readings.stream()
                .filter(reading -> reading.role() != PointRole.KEEPER)
                .mapToDouble(VisitJudging::amount)
                .summaryStatistics();
        return darkest(PointRole.SHADE)
                .filter(shade -> judged.getMax() < LEAST_GRADIENT * judged.getMin() * (1 - ROUNDING));
    }

    private Optional<PointReading> brightest(PointRole role) {
        return readings.stream()
                .filter(reading -> reading.role() == role)
                .max(Comparator.comparingDouble(VisitJudging::amount));
    }

    private Optional<PointReading> darkest(PointRole role) {
        return readings.stream()
                .filter(reading -> reading.role() == role)
                .min(Comparator.comparingDouble(VisitJudging::amount));
    }

    private static double amount(PointReading reading) {
        return reading.measured().amount();
    }

    /**
     * One reading of a visit.
     *
     * @param key names the reading in the result
     * @param measured after calibration, with its interval under the meter's uncertainty
     */
    public record PointReading(long key, PointRole role, MeasuredAmount measured, MeterUncertainty meter) {}
}
