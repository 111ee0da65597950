package dapple.light.field;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dapple.light.geometry.Vec;
import dapple.light.quantity.Quantity;
import dapple.light.source.Beam;
import dapple.light.source.Lamp;
import dapple.light.source.Output;
import dapple.light.source.Source;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FieldTest {
    /** Asked of the engine in these tests. */
    private static final double ACCURACY = 1e-4;

    /** Published factors are exact formulas here, so that the asked accuracy is all that may differ. */
    private static final double EXACT = 1e-6;

    private static final Vec ORIGIN = new Vec(0, 0, 0);
    private static final Vec DOWN = new Vec(0, 0, -1);

    /** Coaxial disc: E = π L R²/(R² + h²), configuration factors of the handbooks [howell2016]. */
    @ParameterizedTest
    @CsvSource({"0.05, 0.1", "0.3, 0.1", "1.0, 0.1", "0.02, 0.2"})
    void agreesWithTheFactorOfACoaxialDisc(double height, double radius) {
        double expected = Math.PI * radius * radius / (radius * radius + height * height);
        assertThat(below(new Source.Disc(radius), height, 0)).isCloseTo(expected, within(EXACT * expected));
    }

    /** Parallel disc off its axis: E = (π L/2) [1 − (s − R²)/√((s + R²)² − 4R²p²)], s = h² + p² [howell2016]. */
    @ParameterizedTest
    @CsvSource({"0.2, 0.1, 0.05", "0.2, 0.1, 0.1", "0.2, 0.1, 0.4", "0.05, 0.1, 0.12"})
    void agreesWithTheFactorOfADiscOffItsAxis(double height, double radius, double aside) {
        double square = height * height + aside * aside;
        double sum = square + radius * radius;
        double expected = Math.PI
                / 2
                * (1 - (square - radius * radius) / Math.sqrt(sum * sum - 4 * radius * radius * aside * aside));
        assertThat(below(new Source.Disc(radius), height, aside)).isCloseTo(expected, within(EXACT * expected));
    }

    /** Rectangle over its corner, a by b at h: the factor of the handbooks, four corners make the whole [howell2016]. */
    @ParameterizedTest
    @CsvSource({"0.4, 0.2, 0.3", "1.0, 0.1, 0.05", "0.2, 0.2, 1.0"})
    void agreesWithTheFactorOfARectangle(double length, double width, double height) {
        double a = length / 2 / height;
        double b = width / 2 / height;
        double rootA = Math.sqrt(1 + a * a);
        double rootB = Math.sqrt(1 + b * b);
        double corner = (a / rootA * Math.atan(b / rootA) + b / rootB * Math.atan(a / rootB)) / (2 * Math.PI);
        double expected = Math.PI * 4 * corner;
        Source source = new Source.Rectangle(length, new Vec(1, 0, 0), width);
        assertThat(below(source, height, 0)).isCloseTo(expected, within(EXACT * expected));
    }

    /** Element that faces the axis of a cylinder, opposite its middle: twice the factor for one end [howell2016]. */
    @ParameterizedTest
    @CsvSource({"0.85, 0.013, 0.05", "0.85, 0.013, 0.3", "0.85, 0.008, 0.3", "0.10, 0.030, 0.15"})
    void agreesWithTheFactorOfAFiniteCylinder(double length, double radius, double distance) {
        double h = distance / radius;
        double l = length / 2 / radius;
        double x = (1 + h) * (1 + h) + l * l;
        double y = (1 - h) * (1 - h) + l * l;
        double factor = Math.atan(l / Math.sqrt(h * h - 1)) / (Math.PI * h)
                + l
                        / Math.PI
                        * ((x - 2 * h) / (h * Math.sqrt(x * y)) * Math.atan(Math.sqrt(x * (h - 1) / (y * (h + 1))))
                                - Math.atan(Math.sqrt((h - 1) / (h + 1))) / h);
        double expected = Math.PI * 2 * factor;
        Source source = new Source.Cylinder(length, new Vec(1, 0, 0), radius);
        assertThat(below(source, distance, 0)).isCloseTo(expected, within(EXACT * expected));
    }

    /** A long tube follows 1/d: E = π I′/(2h) [simons2001]. */
    @Test
    void followsOneOverDistanceNearALongTube() {
        Source tube = new Source.Line(20, new Vec(1, 0, 0), Optional.empty());
        assertThat(below(tube, 0.1, 0)).isCloseTo(Math.PI / 0.2, within(1e-5));
    }

    /** Five times the largest dimension: inverse square within 1 % for a uniform disc [rp16]. */
    @Test
    void keepsTheFiveTimesRuleForADisc() {
        double inverseSquare = Math.PI * 0.1 * 0.1;
        assertThat(below(new Source.Disc(0.1), 1, 0)).isCloseTo(inverseSquare, within(0.0101 * inverseSquare));
    }

    @Test
    void isReproducedByItsOwnReading() {
        Lamp lamp = new Lamp(
                "tube",
                ORIGIN,
                DOWN,
                new Source.Line(0.85, new Vec(1, 0, 0), Optional.of(new Source.Reflector(1.5, 0.05))),
                List.of(new Output.Reading(Quantity.UV_INDEX, 4.2, new Vec(0, 0, -0.3), Vec.UP, 1)));
        Light light = light(new Scene(ACCURACY, List.of(lamp), List.of(), List.of()), new Vec(0, 0, -0.3), Vec.UP);
        assertThat(value(light)).isCloseTo(4.2, within(1e-9));
    }

    /** Two spots at ±45° that each read 6 when faced give 8.49 upwards and 12 all round. */
    @Test
    void findsThePlaneThatHasMostBetweenTwoSpots() {
        Scene scene = spots(1);
        assertThat(value(Field.of(scene).at(new Receiver(ORIGIN, new Facing.Maximum()))))
                .isCloseTo(6 * Math.sqrt(2), within(1e-6));
        assertThat(value(Field.of(scene).at(new Receiver(ORIGIN, new Facing.AllRound()))))
                .isCloseTo(12, within(1e-9));
    }

    /** Two equal opposed lamps: their light as a vector is 0, yet facing either reads its full value. */
    @Test
    void facesOneOfTwoOpposedLamps() {
        assertThat(value(Field.of(spots(0)).at(new Receiver(ORIGIN, new Facing.Maximum()))))
                .isCloseTo(6, within(1e-6));
    }

    private static Scene spots(double height) {
        return new Scene(
                ACCURACY,
                List.of(spot("left", new Vec(-1, 0, height)), spot("right", new Vec(1, 0, height))),
                List.of(),
                List.of());
    }

    private static Lamp spot(String id, Vec at) {
        Source source = new Source.Spot(new Beam.Power(6));
        return new Lamp(id, at, at.times(-1), source, List.of(new Output.Reading(Quantity.UV_INDEX, 6, ORIGIN, at, 1)));
    }

    private static double below(Source source, double height, double aside) {
        Lamp lamp = new Lamp("lamp", ORIGIN, DOWN, source, List.of(new Output.Emission(Quantity.UV_INDEX, 1, 1)));
        Scene scene = new Scene(EXACT, List.of(lamp), List.of(), List.of());
        return value(light(scene, new Vec(aside, 0, -height), Vec.UP));
    }

    private static Light light(Scene scene, Vec place, Vec normal) {
        return Field.of(scene).at(new Receiver(place, new Facing.Direction(normal)));
    }

    private static double value(Light light) {
        return light.values().getOrDefault(Quantity.UV_INDEX, Double.NaN);
    }
}
