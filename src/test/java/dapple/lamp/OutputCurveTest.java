package dapple.lamp;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import dapple.lamp.OutputCurve.Reached;
import dapple.light.quantity.Quantity;
import dapple.site.SourceMark;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OutputCurveTest {
    /** What straight lines in the logarithms between 61 distances leave. */
    private static final double BETWEEN_PERCENT = 0.05;

    private static final LampShape POINT = new LampShape.Spot(40, Optional.empty());
    private static final LampShape LONG_TUBE = new LampShape.Line(10, Optional.empty(), 0);

    private static OutputCurve curve(double reading, double metres, LampShape shape) {
        LampOutput output =
                new LampOutput(Quantity.UV_INDEX, reading, metres, 0.1, SourceMark.FROM_MEMORY, "for a test");
        return OutputCurve.of(output, Optional.of(shape)).orElseThrow();
    }

    private static double metres(Reached reached) {
        return ((Reached.At) reached).metres();
    }

    /** Inverse square, worked by hand: 3 at 0.3 m is 8 at 0.3 · √(3/8) m. */
    @ParameterizedTest
    @CsvSource({"8, 0.183712", "3, 0.3", "0.75, 0.6", "0.35, 0.878310"})
    void ofAPointFallsWithTheSquare(double uvIndex, double metres) {
        assertThat(metres(curve(3, 0.3, POINT).reaches(uvIndex))).isCloseTo(metres, withPercentage(BETWEEN_PERCENT));
    }

    /** Near a long tube light falls with the distance [simons2001]: 3 at 0.3 m is 6 at 0.15 m; within 0.3 % here. */
    @ParameterizedTest
    @CsvSource({"6, 0.15", "4.5, 0.2", "2.25, 0.4"})
    void ofALongTubeFallsWithTheDistance(double uvIndex, double metres) {
        assertThat(metres(curve(3, 0.3, LONG_TUBE).reaches(uvIndex))).isCloseTo(metres, withPercentage(0.3));
    }

    /** A disc on its axis: E ∝ R²/(R² + h²) [howell2016], worked by hand for R = 0.1 m and 4 at 0.2 m: 1 at √0.19 m. */
    @Test
    void ofADiscFallsAsTheHandbookHasIt() {
        OutputCurve curve = curve(4, 0.2, new LampShape.Disc(0.1));
        assertThat(metres(curve.reaches(1))).isCloseTo(Math.sqrt(0.19), withPercentage(BETWEEN_PERCENT));
    }

    @Test
    void isTheStatedOutputAtItsDistance() {
        OutputCurve curve = curve(3, 0.1, new LampShape.Panel(0.3, 0.1));
        assertThat(curve.amounts().get(0)).isCloseTo(3, withPercentage(0.1));
    }

    @Test
    void fallsAllTheWay() {
        OutputCurve curve = curve(3, 0.3, new LampShape.Cylinder(0.12, 0.03));
        assertThat(IntStream.range(1, curve.amounts().size()))
                .allMatch(index -> curve.amounts().get(index) < curve.amounts().get(index - 1));
    }

    @Test
    void saysWhereAnAmountLiesBeyondBothEnds() {
        OutputCurve curve = curve(3, 0.3, POINT);
        assertThat(curve.reaches(30)).isEqualTo(new Reached.Nearer());
        assertThat(curve.reaches(0.1)).isEqualTo(new Reached.Farther());
    }

    /** ±20 % (k = 2): 8 is reached where the curve has 10, or 6.67; by the inverse square √(0.8) and √(1.2) of the way. */
    @Test
    void hasAnIntervalByTheUncertaintyOfTheOutput() {
        OutputCurve curve = curve(3, 0.3, POINT);
        double best = 0.183712;
        assertThat(metres(curve.reachesAtLeast(8))).isCloseTo(best * Math.sqrt(0.8), within(0.0002));
        assertThat(metres(curve.reachesAtMost(8))).isCloseTo(best * Math.sqrt(1.2), within(0.0002));
    }

    @Test
    void mayBeNowhereWhereTheOutputMayBeNothing() {
        LampOutput vague = new LampOutput(Quantity.UV_INDEX, 3, 0.3, 0.5, SourceMark.FROM_MEMORY, "for a test");
        assertThat(OutputCurve.of(vague, Optional.of(POINT)).orElseThrow().reachesAtLeast(1))
                .isEqualTo(new Reached.Nearer());
    }

    @Test
    void isNotDrawnWithoutAShape() {
        LampOutput output = new LampOutput(Quantity.UV_INDEX, 3, 0.3, 0.1, SourceMark.FROM_MEMORY, "for a test");
        assertThat(OutputCurve.of(output, Optional.empty())).isEmpty();
    }

    @Test
    void isNotDrawnFromInsideAThickTube() {
        LampOutput output = new LampOutput(Quantity.UV_INDEX, 3, 0.02, 0.1, SourceMark.FROM_MEMORY, "for a test");
        assertThat(OutputCurve.of(output, Optional.of(new LampShape.Cylinder(0.1, 0.03))))
                .isEmpty();
        assertThat(OutputCurve.of(output, Optional.of(new LampShape.Cylinder(0.1, 0.2))))
                .isEmpty();
    }

    /** Zone 3: ceiling 8.0, basking 7.4 to 2.9 (2010 study, 2016 paper); a point of 3 at 0.3 m, by the inverse square. */
    @Test
    void meetsTheLimitsOfAZoneWhereTheInverseSquareSays() {
        ZoneDistances.ZoneRow zone = new ZoneDistances()
                .of(curve(3, 0.3, POINT)).stream()
                        .filter(row -> row.zone().number() == 3)
                        .findFirst()
                        .orElseThrow();
        assertThat(metres(zone.nearest().metres()))
                .isCloseTo(0.3 * Math.sqrt(3 / 8.0), withPercentage(BETWEEN_PERCENT));
        assertThat(zone.basking())
                .extracting(reach -> metres(reach.metres()))
                .satisfiesExactly(
                        near -> assertThat(near).isCloseTo(0.3 * Math.sqrt(3 / 7.4), withPercentage(BETWEEN_PERCENT)),
                        far -> assertThat(far).isCloseTo(0.3 * Math.sqrt(3 / 2.9), withPercentage(BETWEEN_PERCENT)));
    }
}
