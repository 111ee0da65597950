package dapple.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dapple.drawing.CurvePlot.Curve;
import dapple.drawing.CurvePlot.Point;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CurvePlotTest {
    /** An amount of 100 at 10 cm, by the inverse square: 1 at 100 cm. */
    private static Curve inverseSquare(double spread, double limit) {
        List<Point> points = IntStream.rangeClosed(1, 10)
                .mapToObj(step -> new Point(10 * step, 100.0 / (step * step)))
                .toList();
        return new Curve(points, spread, List.of(new Point(30, 100.0 / 9)), Optional.of(limit));
    }

    private static CurvePlot plot(double spread, double limit) {
        return CurvePlot.of(inverseSquare(spread, limit), PlotSize.WIDE);
    }

    /** Without a spread the scale is from 1 to 100: 10 lies in the middle, at (30 + 250)/2. */
    @Test
    void hasTenHalfWayFromOneToAHundred() {
        assertThat(plot(0, 10).limit()).hasValue(140.0);
    }

    @Test
    void drawsTheStatedAmountOnItsDistance() {
        CurvePlot plot = plot(0, 10);
        double share = Math.log(100.0 / 9) / Math.log(100);
        assertThat(plot.stated()).singleElement().satisfies(spot -> {
            assertThat(spot.x()).isCloseTo(54 + (566 - 54) * 20 / 90.0, within(0.1));
            assertThat(spot.y()).isCloseTo(250 - 220 * share, within(0.1));
        });
    }

    @Test
    void numbersAreOneTwoAndFive() {
        assertThat(plot(0, 10).frame().up())
                .extracting(PlotFrame.Mark::label)
                .containsExactly("1", "2", "5", "10", "20", "50", "100");
    }

    @Test
    void numbersOfManyPowersAreThePowersAlone() {
        Curve curve = new Curve(
                List.of(new Point(10, 200_000), new Point(150, 3)),
                0,
                List.of(new Point(10, 200_000)),
                Optional.empty());
        assertThat(CurvePlot.of(curve, PlotSize.WIDE).frame().up())
                .extracting(PlotFrame.Mark::label)
                .containsExactly("10", "100", "1,000", "10,000", "100,000");
    }

    /** ±20 %: from 0.8 to 120, so from 0.5 to 200. */
    @Test
    void leavesRoomForWhatItMayBe() {
        List<PlotFrame.Mark> up = plot(0.2, 10).frame().up();
        assertThat(up.get(0).label()).isEqualTo("0.5");
        assertThat(up.get(up.size() - 1).label()).isEqualTo("200");
    }

    @Test
    void drawsWhatItMayBeAsAClosedArea() {
        assertThat(plot(0.2, 10).band()).startsWith("M54").endsWith("z");
    }

    @ParameterizedTest
    @CsvSource({"0.9", "150"})
    void drawsNoLimitBeyondTheScale(double limit) {
        assertThat(plot(0, limit).limit()).isEmpty();
    }

    @Test
    void drawsNoStatedAmountBeyondTheDistances() {
        Curve curve = new Curve(
                List.of(new Point(10, 2), new Point(150, 1)), 0, List.of(new Point(200, 0.5)), Optional.empty());
        assertThat(CurvePlot.of(curve, PlotSize.NARROW).stated()).isEmpty();
    }

    /** An output that may be off by more than itself is not drawn to nothing. */
    @Test
    void hasAFloorUnderWhatItMayBe() {
        assertThat(plot(4, 10).frame().up().get(0).label()).isEqualTo("0.1");
    }
}
