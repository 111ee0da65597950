package dapple.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dapple.drawing.Contours.Point;
import java.util.List;
import org.junit.jupiter.api.Test;

class ContoursTest {
    private static final int SIZE = 41;

    /** A cone of height 1 with radius 20 is half as high at radius 10. */
    @Test
    void drawsACircleAroundACone() {
        double[][] cone = new double[SIZE][SIZE];
        for (int row = 0; row < SIZE; row++) {
            for (int column = 0; column < SIZE; column++) {
                cone[row][column] = 1 - Math.hypot(row - 20, column - 20) / 20;
            }
        }
        List<List<Point>> lines = new Contours(cone).at(0.5);
        assertThat(lines).hasSize(1);
        assertThat(lines.get(0))
                .allSatisfy(point -> assertThat(Math.hypot(point.row() - 20, point.column() - 20))
                        .isCloseTo(10, within(0.02)));
    }

    @Test
    void closesAlongTheBorderWhatReachesTheLevelThere() {
        List<List<Point>> lines = new Contours(new double[][] {{1, 1, 1}, {1, 1, 1}}).at(0.5);
        assertThat(lines).hasSize(1);
        assertThat(lines.get(0)).contains(new Point(0, 0), new Point(1, 0), new Point(2, 1));
    }

    @Test
    void keepsTwoHillsApart() {
        assertThat(new Contours(new double[][] {{0, 0, 0, 0, 0}, {0, 1, 0, 1, 0}, {0, 0, 0, 0, 0}}).at(0.5))
                .hasSize(2);
    }

    @Test
    void drawsNothingAboveTheSummit() {
        assertThat(new Contours(new double[][] {{0, 1}, {1, 0}}).at(2)).isEmpty();
    }

    /** The plane c + 2r reaches 9 along a straight line, open at the border; half a step is far more than it may be off. */
    @Test
    void linesOfAPlaneAreStraightAndEndAtTheBorder() {
        double[][] plane = new double[SIZE][SIZE];
        for (int row = 0; row < SIZE; row++) {
            for (int column = 0; column < SIZE; column++) {
                plane[row][column] = column + 2 * row;
            }
        }
        List<List<Point>> lines = new Contours(plane).linesAt(9.5);
        assertThat(lines).hasSize(1);
        assertThat(lines.get(0))
                .allSatisfy(
                        point -> assertThat(point.column() + 2 * point.row()).isCloseTo(9.5, within(1e-9)))
                .contains(new Point(0, 4.75), new Point(9.5, 0));
    }

    @Test
    void aLineThatMeetsNoBorderIsClosed() {
        List<List<Point>> lines = new Contours(new double[][] {{0, 0, 0}, {0, 1, 0}, {0, 0, 0}}).linesAt(0.5);
        assertThat(lines).hasSize(1);
        assertThat(lines.get(0)).first().isEqualTo(lines.get(0).get(4));
    }

    @Test
    void whatReachesTheLevelEverywhereHasNoLine() {
        assertThat(new Contours(new double[][] {{1, 1}, {1, 1}}).linesAt(0.5)).isEmpty();
    }
}
