package dapple.light.expectation;

import dapple.light.quantity.Interval;
import dapple.light.quantity.Quantity;
import java.util.Arrays;
import java.util.List;

/**
 * Between what amounts a careful reading lies, but for one in some hundreds: three standard deviations about what is
 * expected, and a step of the display beyond.
 *
 * @param range what is likely, in the unit of the quantity
 * @param basis what it follows from
 */
public record Expected(Interval range, Basis basis) {
    /**
     * Scatter of a hand-held reading, as a standard deviation in ln: 10 %, place and angle included (from memory, unverified).
     */
    static final double HAND_HELD_SCATTER = 0.10;

    /** Scatter of a temperature from week to week, °C (ours, no source). */
    static final double TEMPERATURE_SCATTER_CELSIUS = 3;

    /** How unsure a usual half life is, as a share of what it says is lost: 0.8 (from memory, unverified). */
    static final double AGEING_SPREAD = 0.8;

    /** How many of the newest readings count (ours, no source). */
    static final int NEWEST = 5;

    private static final double DEVIATIONS = 3;

    /** Standard deviations in half a 95 % interval. */
    private static final double OF_95_PERCENT = 1.96;

    /** Variance of a median over that of a mean, for many normal values: π/2. */
    private static final double MEDIAN_VARIANCE = Math.PI / 2;

    /** Standard deviation over median absolute deviation, for normal values. */
    private static final double BY_MEDIAN_DEVIATION = 1.4826;

    private static final int LEAST_FOR_SCATTER = 3;

    /** What an expectation follows from. */
    public enum Basis {
        READINGS,
        PREDICTION
    }

    /**
     * From readings since the light was last changed: each brought to today by what lamps lose, the median of the newest, in ln
     * but for temperatures.
     *
     * @param newestFirst at least one
     * @param resolution smallest step of the display, above 0
     */
    public static Expected from(Quantity quantity, List<PastReading> newestFirst, Ageing ageing, double resolution) {
        if (newestFirst.isEmpty()) {
            throw new IllegalArgumentException("readings must be at least one, were none");
        }
        List<PastReading> newest = newestFirst.stream().limit(NEWEST).toList();
        Interval range = quantity.isTemperature() ? ofTemperatures(newest) : ofLight(newest, ageing, resolution);
        return new Expected(displayed(quantity, range, resolution), Basis.READINGS);
    }

    /**
     * From what a rig is predicted to give, where nothing was read since it was changed.
     *
     * @param amount in the unit of the quantity, at least 0
     * @param ninetyFive its 95 % interval
     * @param resolution smallest step of the display, above 0
     */
    public static Expected from(Quantity quantity, double amount, Interval ninetyFive, double resolution) {
        double centre = Math.max(amount, resolution / 2);
        double upward = Math.log(Math.max(ninetyFive.high(), centre) / centre) / OF_95_PERCENT;
        double downward =
                Math.log(centre / Math.min(Math.max(ninetyFive.low(), resolution / 2), centre)) / OF_95_PERCENT;
        double spread = Math.hypot(Math.max(upward, downward), HAND_HELD_SCATTER);
        return new Expected(displayed(quantity, about(centre, spread), resolution), Basis.PREDICTION);
    }

    private static Interval ofLight(List<PastReading> newest, Ageing ageing, double resolution) {
        double[] logs = newest.stream()
                .mapToDouble(past -> Math.log(Math.max(past.amount(), resolution / 2)) - ageing.lossIn(past.daysAgo()))
                .toArray();
        double scatter = Math.max(HAND_HELD_SCATTER, scatter(logs));
        double lost = AGEING_SPREAD * ageing.lossIn(newest.get(0).daysAgo());
        return about(Math.exp(median(logs)), Math.hypot(scatter * ofNext(logs.length), lost));
    }

    private static Interval ofTemperatures(List<PastReading> newest) {
        double[] amounts = newest.stream().mapToDouble(PastReading::amount).toArray();
        double spread = Math.max(TEMPERATURE_SCATTER_CELSIUS, scatter(amounts)) * ofNext(amounts.length);
        double middle = median(amounts);
        return new Interval(middle - DEVIATIONS * spread, middle + DEVIATIONS * spread);
    }

    private static Interval about(double amount, double spread) {
        return new Interval(amount * Math.exp(-DEVIATIONS * spread), amount * Math.exp(DEVIATIONS * spread));
    }

    /** The next reading scatters about a median that is unsure itself. */
    private static double ofNext(int readings) {
        return Math.sqrt(1 + MEDIAN_VARIANCE / readings);
    }

    private static double scatter(double[] values) {
        if (values.length < LEAST_FOR_SCATTER) {
            return 0;
        }
        double middle = median(values);
        return BY_MEDIAN_DEVIATION
                * median(
                        Arrays.stream(values).map(one -> Math.abs(one - middle)).toArray());
    }

    private static double median(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        int half = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
    }

    private static Interval displayed(Quantity quantity, Interval range, double resolution) {
        double low = range.low() - resolution;
        return new Interval(quantity.mayBeNegative() ? low : Math.max(0, low), range.high() + resolution);
    }

    /** The same as a meter shows it that is corrected by a factor. */
    public Interval shownBy(double factor) {
        return new Interval(range.low() / factor, range.high() / factor);
    }
}
