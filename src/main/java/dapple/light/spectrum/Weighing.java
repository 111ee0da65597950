package dapple.light.spectrum;

import dapple.light.spectrum.Spectrum.Line;
import dapple.light.spectrum.Spectrum.Sample;
import dapple.light.spectrum.Weight.Between;
import dapple.light.spectrum.Weight.Point;
import java.util.List;

/**
 * The integral of a weight times an interpolated spectrum, in closed form. Between two neighbours among all wavelengths at
 * which the spectrum has a sample or the weight a point, the spectrum is straight and the weight is straight or an
 * exponential. The integral of such a piece of length h, from s₀ to s₁ and from w₀ to w₁, is
 *
 * <ul>
 *   <li>straight: h·(2·s₀·w₀ + s₀·w₁ + s₁·w₀ + 2·s₁·w₁)/6, as Simpson's rule gives it, exact for a quadratic;
 *   <li>exponential, u = ln(w₁/w₀): h·w₀·(s₀·(f − g) + s₁·g) with f = ∫ e^(ut) dt and g = ∫ t·e^(ut) dt from 0 to 1.
 * </ul>
 *
 * Nothing is approximated: only rounding remains, some 1e-15 a piece. All terms are at least 0, so they never cancel.
 */
final class Weighing {
    /** Below it the closed form of g cancels and its series takes over. */
    private static final double STEEP = 0.5;

    /** Terms of the series; at 0.5 the first one left out is below 1e-17. */
    private static final int TERMS = 14;

    private Weighing() {}

    static double sum(Weight weight, Spectrum spectrum) {
        double sum = 0;
        for (Line line : spectrum.lines()) {
            sum += weight.at(line.wavelengthNanometres()) * line.wattsPerSquareMetre();
        }
        return sum + samples(weight, spectrum.samples());
    }

    private static double samples(Weight weight, List<Sample> samples) {
        List<Point> points = weight.points();
        double sum = 0;
        int sample = 0;
        int point = 0;
        while (sample + 1 < samples.size() && point + 1 < points.size()) {
            double sampleEnd = samples.get(sample + 1).wavelengthNanometres();
            double pointEnd = points.get(point + 1).wavelengthNanometres();
            double from = Math.max(
                    samples.get(sample).wavelengthNanometres(),
                    points.get(point).wavelengthNanometres());
            double to = Math.min(sampleEnd, pointEnd);
            if (to > from) {
                double low = between(samples.get(sample), samples.get(sample + 1), from);
                double high = between(samples.get(sample), samples.get(sample + 1), to);
                double first = weight.inside(point, from);
                double last = weight.inside(point, to);
                sum += (to - from)
                        * (weight.between() == Between.LINEAR
                                ? straight(low, high, first, last)
                                : exponential(low, high, first, last));
            }
            sample += sampleEnd <= pointEnd ? 1 : 0;
            point += pointEnd <= sampleEnd ? 1 : 0;
        }
        return sum;
    }

    private static double between(Sample low, Sample high, double nanometres) {
        double share =
                (nanometres - low.wavelengthNanometres()) / (high.wavelengthNanometres() - low.wavelengthNanometres());
        double amount = low.wattsPerSquareMetrePerNanometre();
        return amount + share * (high.wattsPerSquareMetrePerNanometre() - amount);
    }

    private static double straight(double low, double high, double first, double last) {
        return (2 * (low * first + high * last) + low * last + high * first) / 6;
    }

    /** Mean of straight times exponential; a rising weight is mirrored, so that u is never above 0. */
    private static double exponential(double low, double high, double first, double last) {
        if (last > first) {
            return exponential(high, low, last, first);
        }
        double u = Math.log(last / first);
        double f = u == 0 ? 1 : Math.expm1(u) / u;
        double g = u < -STEEP ? (1 - Math.exp(u) * (1 - u)) / (u * u) : series(u);
        return first * (low * (f - g) + high * g);
    }

    /** g = Σ uⁿ/(n!·(n + 2)). */
    private static double series(double u) {
        double power = 1;
        double sum = 0;
        for (int n = 0; n < TERMS; n++) {
            sum += power / (n + 2);
            power *= u / (n + 1);
        }
        return sum;
    }
}
