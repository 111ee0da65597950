package dapple.drawing;

import dapple.light.judging.Band;
import dapple.light.judging.Limits;
import dapple.light.judging.MeasuredAmount;
import java.util.Locale;

/**
 * A reading beside its limits on one horizontal axis from 0: 360 × 62 units, the target's band between two bars, the
 * ceiling, if there is one, as a double bar, the reading as a disc with its interval. Numbers are in units of the drawing.
 */
public record Gauge(double low, double high, double ceiling, double from, double amount, double to) {
    private static final double LEFT = 8;
    private static final double WIDTH = 344;
    private static final double MARGIN = 1.15;
    private static final double HALF_NUMBER = 12;
    private static final double HALF_CEILING_WORDS = 42;

    public static Gauge of(Band band, double ceiling, MeasuredAmount measured) {
        double highest = ceiling < Limits.NO_CEILING ? ceiling : band.high();
        double most = Math.max(highest, measured.interval().high()) * MARGIN;
        double scale = WIDTH / most;
        return new Gauge(
                LEFT + band.low() * scale,
                LEFT + band.high() * scale,
                LEFT + ceiling * scale,
                LEFT + measured.interval().low() * scale,
                LEFT + measured.amount() * scale,
                LEFT + measured.interval().high() * scale);
    }

    /** Where the number of the high limit ends: clear of the words at the ceiling. */
    public double highLabel() {
        return Math.min(high + HALF_NUMBER, ceiling - HALF_CEILING_WORDS);
    }

    /** Whether the number of the high limit has room between its neighbours. */
    public boolean isHighLabelled() {
        double free = low > LEFT ? low + HALF_NUMBER : LEFT - HALF_NUMBER;
        return highLabel() - 2 * HALF_NUMBER > free;
    }

    public double bandWidth() {
        return high - low;
    }

    public String lowBar() {
        return bar(low);
    }

    public String highBar() {
        return bar(high);
    }

    public String ceilingBars() {
        return path("M%.1f 12v28m4 0v-28", ceiling);
    }

    public String whisker() {
        return String.format(Locale.ROOT, "M%.1f 16v8m0-4H%.1fm0-4v8", from, to);
    }

    private static String bar(double x) {
        return path("M%.1f 12v28", x);
    }

    private static String path(String format, double x) {
        return String.format(Locale.ROOT, format, x);
    }
}
