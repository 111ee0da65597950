package dapple.light.calibration;

import dapple.light.calibration.TransmittanceResult.Measured;
import dapple.light.calibration.TransmittanceResult.Unknown;
import dapple.light.quantity.Check;
import dapple.light.uncertainty.StandardUncertainty;
import java.util.List;
import java.util.stream.DoubleStream;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealVector;

/** Fits the transmittance of a cover to pairs of readings with and without it. */
public final class CoverCalibration {
    private static final int MOST_LAYERS = 100;

    private CoverCalibration() {}

    /**
     * The share T that one layer passes: T^layers minimises Huber's loss of (ratio − T^layers)/u. Valid while what is
     * read without the cover is known within about 10 %, since a ratio is not normal beyond.
     *
     * @param pairs at least one
     * @param layers that were there at once, 1 to 100
     */
    public static TransmittanceResult of(List<CoverPair> pairs, int layers) {
        Check.within("layers", layers, 1, MOST_LAYERS, "");
        if (pairs.isEmpty()) {
            throw new IllegalArgumentException("a transmittance wants at least one pair of readings");
        }
        double[] ratios = pairs.stream().mapToDouble(CoverPair::ratio).toArray();
        List<StandardUncertainty> uncertainties =
                pairs.stream().map(CoverPair::ofRatio).toList();
        Curve curve = new Curve(
                List.of(new Coordinate.Share()),
                share -> new ArrayRealVector(pairs.size(), Math.pow(share.getEntry(0), layers)),
                new ArrayRealVector(ratios),
                uncertainties);
        double middle = DoubleStream.of(ratios).sorted().toArray()[ratios.length / 2];
        RobustFit fit = RobustFit.of(curve, new ArrayRealVector(1, Math.pow(Math.min(1, middle), 1.0 / layers)));
        return fit.open().isEmpty()
                ? result(fit)
                : new Unknown("the readings without the cover are not far enough above their own uncertainty");
    }

    private static TransmittanceResult result(RobustFit fit) {
        return fit.trouble().<TransmittanceResult>map(Unknown::new).orElseGet(() -> measured(fit));
    }

    private static Measured measured(RobustFit fit) {
        RealVector residuals = fit.residuals();
        Quality quality = Quality.of(residuals, 1);
        double share = fit.values().getEntry(0);
        double uncertainty = Math.sqrt(fit.covariance().getEntry(0, 0) * quality.variance());
        double expanded = quality.coverageFactor(residuals.getDimension() - 1) * uncertainty;
        return new Measured(
                share,
                uncertainty,
                new Coordinate.Share().around(share, expanded),
                DoubleStream.of(residuals.toArray()).boxed().toList(),
                quality);
    }
}
