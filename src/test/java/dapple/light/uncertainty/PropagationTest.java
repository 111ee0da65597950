package dapple.light.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.DiagonalMatrix;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.MethodSource;

class PropagationTest {
    /** Rounding of differences of numbers near 1. */
    private static final double ROUNDING = 1e-9;

    /** The published numbers have three digits after the point; half a unit of the last. */
    private static final double HALF_OF_LAST_DIGIT = 5e-4;

    /** The guide's uncertainties come from inputs that it rounds in between: a whole unit. */
    private static final double LAST_DIGIT = 1e-3;

    /** JCGM 100:2008, table H.2: five sets of V (V), I (mA) and φ (rad). From memory; means seen in a secondary text. */
    private static final double[][] SETS = {
        {5.007, 19.663, 1.0456},
        {4.994, 19.639, 1.0438},
        {5.005, 19.640, 1.0468},
        {4.990, 19.685, 1.0428},
        {4.999, 19.678, 1.0433}
    };

    private static double resistance(RealVector inputs) {
        return impedance(inputs) * Math.cos(inputs.getEntry(2));
    }

    private static double reactance(RealVector inputs) {
        return impedance(inputs) * Math.sin(inputs.getEntry(2));
    }

    /** Ω, from V and mA. */
    private static double impedance(RealVector inputs) {
        return 1000 * inputs.getEntry(0) / inputs.getEntry(1);
    }

    static Stream<Arguments> impedances() {
        ToDoubleFunction<RealVector> resistance = PropagationTest::resistance;
        ToDoubleFunction<RealVector> reactance = PropagationTest::reactance;
        ToDoubleFunction<RealVector> impedance = PropagationTest::impedance;
        return Stream.of(
                Arguments.of("resistance", resistance, 127.732, 0.071),
                Arguments.of("reactance", reactance, 219.847, 0.295),
                Arguments.of("impedance", impedance, 254.260, 0.236));
    }

    /** JCGM 100:2008, H.2, table H.4: correlated inputs. From memory; seen in a secondary text with one digit less. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("impedances")
    void followsCorrelatedInputs(
            String name, ToDoubleFunction<RealVector> function, double ohm, double uncertaintyOhm) {
        UncertainAmount found = circuit().of(function);
        assertThat(found.value()).isCloseTo(ohm, within(HALF_OF_LAST_DIGIT));
        assertThat(found.standardUncertainty()).isCloseTo(uncertaintyOhm, within(LAST_DIGIT));
    }

    /** The same table. */
    @Test
    void correlatesResults() {
        assertThat(correlation(PropagationTest::resistance, PropagationTest::reactance))
                .isCloseTo(-0.588, within(HALF_OF_LAST_DIGIT));
        assertThat(correlation(PropagationTest::resistance, PropagationTest::impedance))
                .isCloseTo(-0.485, within(HALF_OF_LAST_DIGIT));
        assertThat(correlation(PropagationTest::reactance, PropagationTest::impedance))
                .isCloseTo(0.993, within(HALF_OF_LAST_DIGIT));
    }

    private static double correlation(ToDoubleFunction<RealVector> one, ToDoubleFunction<RealVector> other) {
        Propagation circuit = circuit();
        return circuit.between(one, other)
                / (circuit.of(one).standardUncertainty() * circuit.of(other).standardUncertainty());
    }

    /** Means, and the covariance of the means. */
    private static Propagation circuit() {
        RealMatrix sets = new Array2DRowRealMatrix(SETS);
        int count = SETS.length;
        RealVector means = sets.preMultiply(new ArrayRealVector(count, 1.0 / count));
        RealMatrix around = sets.copy();
        for (int row = 0; row < count; row++) {
            around.setRowVector(row, sets.getRowVector(row).subtract(means));
        }
        return new Propagation(means, around.transposeMultiply(around).scalarMultiply(1.0 / (count * (count - 1))));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "end-gauge-published.csv", useHeadersInDisplayName = true)
    void contributesAsInTheEndGaugeExample(int input, double contributionNanometres, double digitNanometres) {
        double[] uncertainties = new double[GAUGE_UNCERTAINTIES.length];
        uncertainties[input] = GAUGE_UNCERTAINTIES[input];
        assertThat(gauge(uncertainties).standardUncertainty())
                .isCloseTo(contributionNanometres, within(digitNanometres / 2));
    }

    /** JCGM 100:2008, H.1.5 and H.1.6: l = 50.000838 mm, u_c = 32 nm. */
    @Test
    void combinesTheEndGaugeExample() {
        UncertainAmount length = gauge(GAUGE_UNCERTAINTIES);
        assertThat(length.value()).isCloseTo(50_000_838, within(0.5));
        assertThat(length.standardUncertainty()).isCloseTo(32, within(0.5));
    }

    /** JCGM 100:2008, H.1, table H.1: l_s nm, d nm (repeated, random, systematic), δα 1/K, θ K, α 1/K, δθ K. */
    private static final double[] GAUGE = {50_000_623, 215, 0, 0, 0, -0.1, 11.5e-6, 0};

    private static final double[] GAUGE_UNCERTAINTIES = {
        25, 5.8, 3.9, 6.7, 1e-6 / Math.sqrt(3), 0.41, 2e-6 / Math.sqrt(3), 0.05 / Math.sqrt(3)
    };

    private static UncertainAmount gauge(double[] uncertainties) {
        RealVector squares = new ArrayRealVector(uncertainties).map(u -> u * u);
        return new Propagation(new ArrayRealVector(GAUGE), new DiagonalMatrix(squares.toArray()))
                .of(x -> x.getEntry(0)
                        + x.getEntry(1)
                        + x.getEntry(2)
                        + x.getEntry(3)
                        - x.getEntry(0) * (x.getEntry(4) * x.getEntry(5) + x.getEntry(6) * x.getEntry(7)));
    }

    @Test
    void whatIsFullySharedAddsUpAndWhatIsNotAddsAsSquares() {
        RealVector two = new ArrayRealVector(new double[] {3, 4});
        ToDoubleFunction<RealVector> sum = inputs -> inputs.getEntry(0) + inputs.getEntry(1);
        RealMatrix shared = new Array2DRowRealMatrix(new double[][] {{9, 12}, {12, 16}});
        assertThat(new Propagation(two, shared).of(sum).standardUncertainty()).isCloseTo(7, within(ROUNDING));
        RealMatrix apart = new DiagonalMatrix(new double[] {9, 16});
        assertThat(new Propagation(two, apart).of(sum).standardUncertainty()).isCloseTo(5, within(ROUNDING));
    }

    @Test
    void wantsARowForEveryInput() {
        assertThatThrownBy(() -> new Propagation(new ArrayRealVector(2), new DiagonalMatrix(new double[] {1})))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void anIntervalNeverReachesBelowZero() {
        assertThat(new UncertainAmount(1, 0.8).interval().low()).isZero();
        assertThat(new UncertainAmount(1, 0.8).interval().high()).isCloseTo(2.6, within(ROUNDING));
    }
}
