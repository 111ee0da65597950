package dapple.light.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dapple.light.uncertainty.StandardUncertainty;
import java.util.Collections;
import java.util.List;
import java.util.function.UnaryOperator;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RobustFitTest {
    /** Certified to 11 digits; what is left of differences and of the end of the search. */
    private static final double OF_VALUES = 1e-7;

    /** Differences are off by a sixth of the square of their step, 1e-3. */
    private static final double OF_UNCERTAINTIES = 1e-6;

    /** NIST StRD Misra1a: pressure, volume. A data set of the United States government; certified values beside it. */
    private static final double[] PRESSURE = {
        77.6, 114.9, 141.1, 190.8, 239.9, 289.0, 332.8, 378.4, 434.8, 477.3, 536.8, 593.1, 689.1, 760.0
    };

    private static final double[] VOLUME = {
        10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02, 44.82, 50.76, 55.05, 61.01, 66.40, 75.47, 81.78
    };

    /** JCGM 100:2008, table H.6: readings of a thermometer and corrections, °C; here as a secondary text has them. */
    private static final double[] READ = {
        21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.010, 26.511
    };

    private static final double[] CORRECTION = {
        -0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.160
    };

    /** From both starts of the data set: y = b1 (1 − exp(−b2 x)). */
    @ParameterizedTest
    @CsvSource({"500, 0.0001", "250, 0.0005"})
    void agreesWithTheCertifiedFitOfMisra1a(double b1, double b2) {
        Coordinate positive = new Coordinate.Logarithm(0);
        Fit fit = fit(
                List.of(positive, positive),
                PRESSURE,
                VOLUME,
                b -> new ArrayRealVector(PRESSURE).map(x -> b.getEntry(0) * (1 - Math.exp(-b.getEntry(1) * x))),
                b1,
                b2);
        double residual = fit.standardDeviation();
        assertThat(fit.value(0)).isCloseTo(2.3894212918E+02, within(2.39E+02 * OF_VALUES));
        assertThat(fit.value(1)).isCloseTo(5.5015643181E-04, within(5.50E-04 * OF_VALUES));
        assertThat(residual).isCloseTo(1.0187876330E-01, within(1.02E-01 * OF_VALUES));
        assertThat(residual * fit.uncertainty(0)).isCloseTo(2.7070075241E+00, within(2.71 * OF_UNCERTAINTIES));
        assertThat(residual * fit.uncertainty(1)).isCloseTo(7.2668688436E-06, within(7.27E-06 * OF_UNCERTAINTIES));
    }

    /** Intercept at 20 °C −0.1712 with 0.0029, slope 0.00218 with 0.00067, correlation −0.930, s 0.0035 °C. */
    @Test
    void agreesWithTheGuidesStraightLine() {
        Coordinate aboveMinusOne = new Coordinate.Logarithm(1);
        Fit fit = fit(
                List.of(aboveMinusOne, aboveMinusOne),
                READ,
                CORRECTION,
                y -> new ArrayRealVector(READ).map(t -> y.getEntry(0) + y.getEntry(1) * (t - 20)),
                0,
                0);
        double residual = fit.standardDeviation();
        assertThat(fit.value(0)).isCloseTo(-0.1712, within(0.00005));
        assertThat(fit.value(1)).isCloseTo(0.00218, within(0.000005));
        assertThat(residual).isCloseTo(0.0035, within(0.00005));
        assertThat(residual * fit.uncertainty(0)).isCloseTo(0.0029, within(0.00005));
        assertThat(residual * fit.uncertainty(1)).isCloseTo(0.00067, within(0.000005));
        assertThat(fit.correlation()).isCloseTo(-0.930, within(0.0005));
    }

    /** Where all is normal Huber's loss is 95 % as efficient as squares with c = 1.345; both numbers as usually given. */
    @Test
    void huberIsAsEfficientAsPublished() {
        assertThat(1 / Huber.VARIANCE).isCloseTo(0.95, within(0.0005));
    }

    @Test
    void aStraightLineIsFoundInSpiteOfOneBadReading() {
        double[] x = {1, 2, 3, 4, 5, 6, 7, 8};
        double[] y = {1, 2, 3, 40, 5, 6, 7, 8};
        Curve curve = new Curve(
                List.of(new Coordinate.Logarithm(0)),
                slope -> new ArrayRealVector(x).mapMultiply(slope.getEntry(0)),
                new ArrayRealVector(y),
                Collections.nCopies(x.length, StandardUncertainty.absolute(0.1)));
        RobustFit fit = RobustFit.of(curve, new ArrayRealVector(1, 3.0));
        double mostPull = Huber.C * 0.1 * 4 / (204 - 16);
        assertThat(fit.values().getEntry(0)).isCloseTo(1, within(mostPull * (1 + OF_UNCERTAINTIES)));
    }

    @Test
    void saysWhenItGoesAstray() {
        Curve nowhere = new Curve(
                List.of(new Coordinate.Logarithm(0)),
                unused -> new ArrayRealVector(3, Double.NaN),
                new ArrayRealVector(new double[] {1, 2, 3}),
                Collections.nCopies(3, StandardUncertainty.absolute(0.1)));
        RobustFit fit = RobustFit.of(nowhere, new ArrayRealVector(1, 1.0));
        assertThat(fit.trouble()).isPresent();
        assertThat(fit.open()).isEmpty();
    }

    /** With uncertainties so large that every residual counts in full: plain least squares. */
    private static Fit fit(
            List<Coordinate> coordinates, double[] x, double[] y, UnaryOperator<RealVector> model, double... start) {
        Curve curve = new Curve(
                coordinates,
                model,
                new ArrayRealVector(y),
                Collections.nCopies(x.length, StandardUncertainty.absolute(1)));
        return new Fit(RobustFit.of(curve, new ArrayRealVector(start)), coordinates);
    }

    private record Fit(RobustFit fit, List<Coordinate> coordinates) {
        double value(int index) {
            return fit.values().getEntry(index);
        }

        double uncertainty(int index) {
            return Math.sqrt(fit.covariance().getEntry(index, index))
                    * coordinates.get(index).slope(value(index));
        }

        double correlation() {
            RealMatrix covariance = fit.covariance();
            return covariance.getEntry(0, 1) / Math.sqrt(covariance.getEntry(0, 0) * covariance.getEntry(1, 1));
        }

        double standardDeviation() {
            RealVector residuals = fit.residuals();
            return residuals.getNorm() / Math.sqrt(residuals.getDimension() - coordinates.size());
        }
    }
}
