package dapple.drawing;

import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/**
 * Values upward from 0 to a round one, in round steps: 1, 2 or 5 of a power of ten.
 *
 * @param top where the highest value lies, in units of the drawing
 * @param bottom where 0 lies
 */
record ValueAxis(double step, int steps, double top, double bottom) {
    private static final int MOST_STEPS = 5;
    private static final List<Double> ROUND = List.of(1.0, 2.0, 5.0, 10.0);

    /** For values up to a highest; with none above 0, up to 1. */
    static ValueAxis upTo(double highest, double top, double bottom) {
        double most = highest > 0 ? highest : 1;
        double magnitude = Math.pow(10, Math.floor(Math.log10(most / MOST_STEPS)));
        double step = ROUND.stream()
                .mapToDouble(round -> round * magnitude)
                .filter(size -> size * MOST_STEPS >= most)
                .findFirst()
                .orElse(10 * magnitude);
        return new ValueAxis(step, Math.max(1, (int) Math.ceil(most / step - 1e-9)), top, bottom);
    }

    double y(double amount) {
        return Rounded.of(bottom - amount / (step * steps) * (bottom - top));
    }

    List<StripFrame.Tick> ticks() {
        return IntStream.rangeClosed(0, steps)
                .mapToObj(i -> new StripFrame.Tick(y(i * step), written(i * step)))
                .toList();
    }

    private String written(double amount) {
        int decimals = (int) Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
        return amount == 0 ? "0" : String.format(Locale.ROOT, "%,." + decimals + "f", amount);
    }
}
