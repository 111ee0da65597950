package dapple.light.spectrum;

import dapple.light.quantity.Check;
import java.util.List;

/**
 * A weighting function of the wavelength: points, in between straight in the weight or in its logarithm, 0 before the
 * first and after the last.
 *
 * @param points two or more, at strictly ascending wavelengths
 */
public record Weight(List<Point> points, Between between) {
    private static final double SMALLEST_LOGARITHMIC = 1e-30;
    private static final double LARGEST = 1e6;

    /** How a weight goes from one point to the next. */
    public enum Between {
        /** Straight. */
        LINEAR,
        /** Straight in the logarithm: an exponential. */
        LOG_LINEAR
    }

    /**
     * The weight at a wavelength.
     *
     * @param wavelengthNanometres 1 to 1,000,000
     * @param weight 0 to 1e6, at least 1e-30 where the logarithm is straight; its unit is the function's own
     */
    public record Point(double wavelengthNanometres, double weight) {}

    public Weight {
        points = List.copyOf(points);
        if (points.size() < 2) {
            throw new IllegalArgumentException("a weight must have 2 points or more, had " + points.size());
        }
        double shortest = Spectrum.SHORTEST_NANOMETRES;
        for (int index = 0; index < points.size(); index++) {
            Point point = points.get(index);
            String row = " of point " + index;
            double nanometres = point.wavelengthNanometres();
            Check.within("wavelength" + row, nanometres, shortest, Spectrum.LONGEST_NANOMETRES, "nm");
            double smallest = between == Between.LOG_LINEAR ? SMALLEST_LOGARITHMIC : 0;
            Check.within("weight" + row, point.weight(), smallest, LARGEST, "");
            shortest = Math.nextUp(nanometres);
        }
    }

    public static Weight linear(List<Point> points) {
        return new Weight(points, Between.LINEAR);
    }

    public static Weight logLinear(List<Point> points) {
        return new Weight(points, Between.LOG_LINEAR);
    }

    /** 1 on a band, both ends included. */
    static Weight oneFrom(double lowNanometres, double highNanometres) {
        return linear(List.of(new Point(lowNanometres, 1), new Point(highNanometres, 1)));
    }

    /**
     * The erythema action spectrum [isocie17166]: 1 from 250 to 298 nm, 10^(0.094·(298 − λ)) to 328 nm,
     * 10^(0.015·(140 − λ)) to 400 nm, 0 outside. Its logarithm is straight between those four wavelengths, so that they
     * give the whole of it. Both formulas meet at 328 nm.
     */
    public static Weight erythema() {
        return logLinear(List.of(
                new Point(250, 1),
                new Point(298, 1),
                new Point(328, Math.pow(10, 0.094 * (298 - 328))),
                new Point(400, Math.pow(10, 0.015 * (140 - 400)))));
    }

    /** The weight at a wavelength, nm. */
    public double at(double nanometres) {
        int last = points.size() - 1;
        if (!(nanometres >= points.get(0).wavelengthNanometres()
                && nanometres <= points.get(last).wavelengthNanometres())) {
            return 0;
        }
        int low = 0;
        int high = last;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (points.get(middle).wavelengthNanometres() <= nanometres) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return inside(low, nanometres);
    }

    /**
     * The irradiance so weighted: ∫ w(λ)·E(λ) dλ over the samples' straight lines, plus w(λ)·E of each line.
     *
     * @return W/m² times the weight's own unit
     */
    public double of(Spectrum spectrum) {
        return Weighing.sum(this, spectrum);
    }

    /** The weight at a wavelength between the point of an index and the next. */
    double inside(int index, double nanometres) {
        Point low = points.get(index);
        Point high = points.get(index + 1);
        double share =
                (nanometres - low.wavelengthNanometres()) / (high.wavelengthNanometres() - low.wavelengthNanometres());
        if (between == Between.LINEAR) {
            return low.weight() + share * (high.weight() - low.weight());
        }
        return low.weight() * Math.pow(high.weight() / low.weight(), share);
    }
}
