package dapple.light.calibration;

import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import org.hipparchus.distribution.continuous.ChiSquaredDistribution;
import org.hipparchus.distribution.continuous.TDistribution;
import org.hipparchus.linear.RealVector;

/**
 * How well readings scatter as their uncertainties say.
 *
 * @param reducedChiSquare about 1 where they do: Σ r·ψ(r)/E over the degrees of freedom, with Huber's ψ, so that one bad
 *     reading does not decide; empty where no degree of freedom is left
 * @param isWidened whether they scatter so much more, beyond what chance does one time in a hundred, that uncertainties
 *     were multiplied by the root of it
 */
public record Quality(OptionalDouble reducedChiSquare, boolean isWidened) {
    private static final double CHANCE = 0.99;
    private static final double TWO_SIDED = 0.975;

    static Quality of(RealVector residuals, int parameters) {
        int freedom = residuals.getDimension() - parameters;
        if (freedom < 1) {
            return new Quality(OptionalDouble.empty(), false);
        }
        double reduced = DoubleStream.of(residuals.toArray()).map(Huber::square).sum() / freedom;
        double most = new ChiSquaredDistribution(freedom).inverseCumulativeProbability(CHANCE) / freedom;
        return new Quality(OptionalDouble.of(reduced), reduced > most);
    }

    /** What a covariance by the stated uncertainties is multiplied by. */
    double variance() {
        return Huber.VARIANCE * (isWidened ? reducedChiSquare.orElse(1) : 1);
    }

    /** Coverage factor: 2, or Student's where the scatter itself was taken from these readings. */
    double coverageFactor(int freedom) {
        return isWidened ? new TDistribution(freedom).inverseCumulativeProbability(TWO_SIDED) : 2;
    }
}
