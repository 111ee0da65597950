package dapple.light.field;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dapple.light.geometry.Vec;
import dapple.light.source.Beam;
import dapple.light.source.Source;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** How far the simple laws of distance are off, near a source: 1/d² of a point, 1/d of a tube without ends. */
class DistanceLawTest {
    /** Half a unit of the last digit of the tables. */
    private static final double PERCENT = 5e-4;

    /** The accuracy asked for, as percent, beside it. */
    private static final double ASKED_PERCENT = 2e-4;

    private static final Vec ALONG = new Vec(1, 0, 0);

    /** All sources have the size 1 m. */
    @ParameterizedTest
    @CsvFileSource(resources = "inverse-square-published.csv", useHeadersInDisplayName = true)
    void isOffAtTheInverseSquare(String shape, @Nullable Double exponent, double distance, double percentOver) {
        double inverseSquare = intensity(shape) / (distance * distance);
        double light = Alone.light(source(shape, exponent), new Vec(0, 0, -distance), Vec.UP);
        assertThat(100 * (inverseSquare / light - 1)).isCloseTo(percentOver, within(PERCENT + ASKED_PERCENT));
    }

    private static Source source(String shape, @Nullable Double exponent) {
        double radius = 0.5;
        if (shape.equals("line")) {
            return new Source.Line(1, ALONG, Optional.empty());
        }
        return exponent == null || shape.equals("disc")
                ? new Source.Disc(radius)
                : new Source.Face(new Beam.Power(exponent), radius);
    }

    /** Along the axis, of emission 1: a disc has radiance 1, a face intensity 1, a line 1 a metre. */
    private static double intensity(String shape) {
        return shape.equals("disc") ? Math.PI / 4 : 1;
    }

    @ParameterizedTest
    @CsvFileSource(resources = "one-over-distance-published.csv", useHeadersInDisplayName = true)
    void isOffAtOneOverDistance(double distance, double percentOver) {
        Source tube = new Source.Line(1, ALONG, Optional.empty());
        double light = Alone.light(tube, new Vec(0, 0, -distance), Vec.UP);
        assertThat(100 * (Math.PI / (2 * distance) / light - 1))
                .isCloseTo(percentOver, within(PERCENT + ASKED_PERCENT));
    }
}
