package dapple.light.field;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dapple.light.cover.Filter;
import dapple.light.geometry.Box;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Quantity;
import dapple.light.source.Beam;
import dapple.light.source.Lamp;
import dapple.light.source.Output;
import dapple.light.source.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class FieldPropertiesTest {
    private static final double ACCURACY = 1e-4;

    /** Two integrations of the asked accuracy may differ by twice that. */
    private static final double TWICE = 2 * ACCURACY;

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 60);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void growsWithTheOutput(long seed) {
        SeededScenes open = SeededScenes.filtered(seed);
        double one = value(scene(open, lamp(open, 1)), open.place(), open.normal());
        double seven = value(scene(open, lamp(open, 7)), open.place(), open.normal());
        assertThat(seven).isCloseTo(7 * one, within(1e-9 * seven + Double.MIN_NORMAL));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void addsUpOverLamps(long seed) {
        SeededScenes one = SeededScenes.filtered(seed);
        Lamp other = new Lamp(
                "other",
                new Vec(0.2, 0.1, 0),
                one.lamp().aim(),
                one.lamp().source(),
                one.lamp().outputs());
        double both = value(scene(one, one.lamp(), other), one.place(), one.normal());
        double sum = value(scene(one, one.lamp()), one.place(), one.normal())
                + value(scene(one, other), one.place(), one.normal());
        assertThat(both).isCloseTo(sum, within(1e-12 * sum + Double.MIN_NORMAL));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void isTheSameForAnotherThreadToTheLastBit(long seed) {
        SeededScenes shaded = SeededScenes.shaded(seed);
        Field field = Field.of(shaded.scene(ACCURACY));
        Receiver receiver = new Receiver(shaded.place(), new Facing.Maximum());
        field.at(new Receiver(new Vec(0.3, 0.2, -0.8), new Facing.AllRound()));
        assertThat(value(field.another().at(receiver))).isEqualTo(value(field.at(receiver)));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void isNeverNegative(long seed) {
        SeededScenes shaded = SeededScenes.shaded(seed);
        assertThat(value(shaded.scene(ACCURACY), shaded.place(), shaded.normal()))
                .isNotNegative();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void neverGrowsThroughALayerOrBehindASolid(long seed) {
        SeededScenes shaded = SeededScenes.shaded(seed);
        List<Filter> more = new ArrayList<>(shaded.filters());
        more.add(new Filter.Mesh(Filter.Plane.of(new Vec(0, 0, -0.5), Vec.UP, Optional.empty()), 0.0009, 0.00635, 2));
        double before = value(shaded.scene(ACCURACY), shaded.place(), shaded.normal());
        double open = value(
                new Scene(ACCURACY, List.of(shaded.lamp()), shaded.filters(), List.of()),
                shaded.place(),
                shaded.normal());
        double after = value(
                new Scene(ACCURACY, List.of(shaded.lamp()), more, shaded.solids()), shaded.place(), shaded.normal());
        assertThat(after).isLessThanOrEqualTo(before * (1 + TWICE) + 1e-12);
        assertThat(before).isLessThanOrEqualTo(open * (1 + TWICE) + 1e-12);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void hasNoPlaneThatBeatsTheOneWithMost(long seed) {
        SeededScenes shaded = SeededScenes.shaded(seed);
        Field field = Field.of(shaded.scene(ACCURACY));
        double most = value(field.at(new Receiver(shaded.place(), new Facing.Maximum())));
        double any = value(field.at(new Receiver(shaded.place(), new Facing.Direction(shaded.normal()))));
        double round = value(field.at(new Receiver(shaded.place(), new Facing.AllRound())));
        assertThat(most).isGreaterThanOrEqualTo(any * (1 - TWICE) - 1e-12);
        assertThat(round).isGreaterThanOrEqualTo(most * (1 - TWICE) - 1e-12);
    }

    /** A point's light on a small disc is the disc's light on the point: both are I · A · cos θ/r². */
    @ParameterizedTest
    @ValueSource(doubles = {0.2, 0.5, 1})
    void isReciprocal(double distance) {
        Lamp disc = new Lamp(
                "disc",
                new Vec(0, 0, 0),
                new Vec(0, 0, -1),
                new Source.Disc(0.001),
                List.of(new Output.Emission(Quantity.UV_INDEX, 1, 1)));
        Lamp spot = new Lamp(
                "spot",
                new Vec(0.1, 0, -distance),
                new Vec(0, 0, 1),
                new Source.Spot(new Beam.Power(1)),
                List.of(new Output.Emission(Quantity.UV_INDEX, 1, 1)));
        double there = value(new Scene(1e-6, List.of(disc), List.of(), List.of()), spot.centre(), Vec.UP);
        double back = value(new Scene(1e-6, List.of(spot), List.of(), List.of()), disc.centre(), new Vec(0, 0, -1));
        assertThat(there).isCloseTo(back * Math.PI * 1e-6, within(1e-4 * there));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void refusesSizesThatNoLampHas(double size) {
        Vec along = new Vec(1, 0, 0);
        assertThatThrownBy(() -> new Source.Line(size, along, Optional.empty()))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Source.Disc(size)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Source.Cylinder(1, along, size)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Source.Rectangle(1, along, size)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Box.of(new Vec(0, 0, 0), new Vec(1, 1, size), 0))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static Lamp lamp(SeededScenes scene, double output) {
        return new Lamp(
                "lamp",
                scene.lamp().centre(),
                scene.lamp().aim(),
                scene.lamp().source(),
                List.of(new Output.Emission(Quantity.UV_INDEX, output, 1)));
    }

    private static Scene scene(SeededScenes seeded, Lamp... lamps) {
        return new Scene(ACCURACY, List.of(lamps), seeded.filters(), List.of());
    }

    private static double value(Scene scene, Vec place, Vec normal) {
        return value(Field.of(scene).at(new Receiver(place, new Facing.Direction(normal))));
    }

    private static double value(Light light) {
        return light.values().getOrDefault(Quantity.UV_INDEX, Double.NaN);
    }
}
