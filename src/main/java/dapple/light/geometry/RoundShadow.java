package dapple.light.geometry;

import java.util.function.DoubleUnaryOperator;

/**
 * The shadow of a round convex solid on a segment. Its distance from the way to a point of the segment, as a function of
 * the share along it, has a single valley, since what a convex solid hides is one interval; the ends of the valley below
 * 0 are found by bisection.
 */
final class RoundShadow {
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;
    private static final int NARROWINGS = 48;
    private static final int HALVINGS = 52;

    private RoundShadow() {}

    /**
     * Finds where the gap is negative.
     *
     * @param gap distance of the way from the solid, negative where it passes through
     * @param low share along the segment from which the solid can hide anything
     * @param high share up to which it can
     */
    static boolean interval(DoubleUnaryOperator gap, double low, double high, Shadow shadow) {
        double deepest = deepest(gap, low, high);
        if (!(gap.applyAsDouble(deepest) < 0)) {
            return false;
        }
        return shadow.set(
                gap.applyAsDouble(low) < 0 ? low : edge(gap, low, deepest),
                gap.applyAsDouble(high) < 0 ? high : edge(gap, high, deepest));
    }

    private static double deepest(DoubleUnaryOperator gap, double low, double high) {
        double left = low;
        double right = high;
        double first = right - GOLDEN * (right - left);
        double second = left + GOLDEN * (right - left);
        double atFirst = gap.applyAsDouble(first);
        double atSecond = gap.applyAsDouble(second);
        for (int step = 0; step < NARROWINGS && Math.min(atFirst, atSecond) >= 0; step++) {
            if (atFirst <= atSecond) {
                right = second;
                second = first;
                atSecond = atFirst;
                first = right - GOLDEN * (right - left);
                atFirst = gap.applyAsDouble(first);
            } else {
                left = first;
                first = second;
                atFirst = atSecond;
                second = left + GOLDEN * (right - left);
                atSecond = gap.applyAsDouble(second);
            }
        }
        return atFirst <= atSecond ? first : second;
    }

    private static double edge(DoubleUnaryOperator gap, double outside, double inside) {
        double out = outside;
        double in = inside;
        for (int step = 0; step < HALVINGS; step++) {
            double middle = (out + in) / 2;
            if (gap.applyAsDouble(middle) < 0) {
                in = middle;
            } else {
                out = middle;
            }
        }
        return (out + in) / 2;
    }
}
