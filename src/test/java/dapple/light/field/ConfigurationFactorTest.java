package dapple.light.field;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dapple.light.geometry.Vec;
import dapple.light.source.Source;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** The factors of the handbooks: a surface of radiance 1 gives E = π F. */
class ConfigurationFactorTest {
    /** The accuracy asked for; the factors have more digits. */
    private static final double ASKED = 1e-6;

    /** Half a unit of the last digit of the tables of aspect factors. */
    private static final double THREE_DIGITS = 5e-4;

    private static final Vec ALONG = new Vec(1, 0, 0);

    @ParameterizedTest
    @CsvFileSource(resources = "disc-factors-published.csv", useHeadersInDisplayName = true)
    void isThatOfADisc(double radius, double height, double aside, String receiver, double factor) {
        Vec facing = receiver.equals("parallel") ? Vec.UP : new Vec(-1, 0, 0);
        double light = Alone.light(new Source.Disc(radius), new Vec(aside, 0, -height), facing);
        assertThat(light / Math.PI).isCloseTo(factor, within(ASKED * factor));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "rectangle-factors-published.csv", useHeadersInDisplayName = true)
    void isThatOfARectangle(double length, double width, double height, String receiver, double factor) {
        Vec facing = receiver.equals("parallel") ? Vec.UP : ALONG;
        Source source = new Source.Rectangle(length, ALONG, width);
        double light = Alone.light(source, new Vec(length / 2, width / 2, 0), new Vec(0, 0, -height), facing);
        assertThat(light / Math.PI).isCloseTo(factor, within(ASKED * factor));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "cylinder-factors-published.csv", useHeadersInDisplayName = true)
    void isThatOfACylinder(double radius, double length, double distance, double factor) {
        Source source = new Source.Cylinder(length, ALONG, radius);
        double light = Alone.light(source, new Vec(length / 2, 0, 0), new Vec(0, 0, -distance), Vec.UP);
        assertThat(light / Math.PI).isCloseTo(factor, within(ASKED * factor));
    }

    /** A line of intensity 1 a metre, 0.3 m above: E = AF/0.3. */
    @ParameterizedTest
    @CsvFileSource(resources = "line-aspect-factors-published.csv", useHeadersInDisplayName = true)
    void isTheAspectFactorOfALine(double angleDegrees, double parallel, double perpendicular) {
        double height = 0.3;
        double length = height * Math.tan(Math.toRadians(angleDegrees));
        Source source = new Source.Line(length, ALONG, Optional.empty());
        Vec centre = new Vec(length / 2, 0, 0);
        Vec place = new Vec(0, 0, -height);
        assertThat(Alone.light(source, centre, place, Vec.UP) * height).isCloseTo(parallel, within(THREE_DIGITS));
        assertThat(Alone.light(source, centre, place, ALONG) * height).isCloseTo(perpendicular, within(THREE_DIGITS));
    }
}
