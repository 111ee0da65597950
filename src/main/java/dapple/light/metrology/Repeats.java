package dapple.light.metrology;

import dapple.light.quantity.Check;
import java.util.List;

/**
 * Readings of one point one after the other, of which the median counts (common practice, no source).
 *
 * @param amounts at least 1, each at least 0, in the order in which they were read
 */
public record Repeats(List<Double> amounts) {
    /** How many are asked for (common practice, no source). */
    public static final int ASKED = 3;

    /** (largest − smallest)/median above which the point is read anew: 15 % (common practice, no source). */
    public static final double WIDEST_SPREAD = 0.15;

    private static final double ROUNDING = 1e-9;

    public Repeats {
        amounts = List.copyOf(amounts);
        Check.within("number of repeats", amounts.size(), 1, Integer.MAX_VALUE, "");
        amounts.forEach(amount -> Check.notNegative("amount", amount, ""));
    }

    public double median() {
        List<Double> sorted = amounts.stream().sorted().toList();
        int size = sorted.size();
        return (sorted.get((size - 1) / 2) + sorted.get(size / 2)) / 2;
    }

    public boolean isComplete() {
        return amounts.size() >= ASKED;
    }

    /**
     * Whether they are too far apart for their median to count. One step of the display apart is never too far: dim
     * points could not be read otherwise.
     *
     * @param resolution step of the display, at least 0, in the unit of the amounts
     */
    public boolean asksAgain(double resolution) {
        double range = range();
        return range > WIDEST_SPREAD * median() && range > resolution * (1 + ROUNDING);
    }

    /** Largest less smallest, in the unit of the amounts. */
    public double range() {
        double high = amounts.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
        double low = amounts.stream().mapToDouble(Double::doubleValue).min().orElseThrow();
        return high - low;
    }
}
