package dapple.light.field;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dapple.light.geometry.Box;
import dapple.light.geometry.Vec;
import dapple.light.source.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class FieldPropertiesTest {
    private static final double ACCURACY = 1e-4;

    /** Two integrations of the asked accuracy may differ by twice that. */
    private static final double TWICE = 2 * ACCURACY;

    /** What is smaller is nothing, where the lamps emit 1. */
    private static final double NOTHING = 1e-12;

    private static final Vec LEANING = new Vec(0.2, -0.3, 1).unit();

    /** Asked where places are many. */
    private static final double ROUGH = 0.01;

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 66);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void growsWithTheOutput(long seed) {
        SeededScene scene = facingUp(seed);
        double one = scene.emitting(1).value(ACCURACY);
        double seven = scene.emitting(7).value(ACCURACY);
        assertThat(seven).isCloseTo(7 * one, within(1e-12 * seven));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void addsUpOverLamps(long seed) {
        SeededScene scene = facingUp(seed);
        double sum = scene.seededLamps().stream()
                .mapToDouble(lamp -> scene.with(List.of(lamp)).value(ACCURACY))
                .sum();
        assertThat(scene.value(ACCURACY)).isCloseTo(sum, within(1e-12 * sum));
    }

    /** On grids lamps that give less than others are known less closely; the sum keeps what was asked. */
    @ParameterizedTest
    @MethodSource("seeds")
    void keepsTheAccuracyOfTheSumWhereManyPlacesAreAsked(long seed) {
        SeededScene scene = SeededScenes.filtered(seed);
        Field field = Field.of(scene.scene(ROUGH));
        double[] amounts = new double[field.quantities().size()];
        field.amounts(scene.place(), scene.receiver().facing(), amounts);
        double one = amounts[field.quantities().indexOf(scene.quantity())];
        double close = scene.value(ACCURACY);
        assertThat(one).isCloseTo(close, within((ROUGH + ACCURACY) * close + NOTHING));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void isAFiniteAmountAndNeverNegative(long seed) {
        assertThat(Stream.of(SeededScenes.open(seed), SeededScenes.filtered(seed), SeededScenes.shaded(seed))
                        .map(scene -> scene.emitting(1).light(ACCURACY))
                        .flatMap(light -> Stream.concat(
                                Stream.of(light.error()),
                                Stream.concat(Stream.of(light.values()), light.byLamp().stream())
                                        .flatMap(amounts -> amounts.values().stream()))))
                .allMatch(amount -> amount >= 0 && amount < Double.POSITIVE_INFINITY);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void neverGrowsThroughOneMoreLayer(long seed) {
        SeededScene scene = facingUp(seed);
        Cover.Plate plate = new Cover.Plate(new Vec(0, 0, -0.14), Vec.UP, new Vec(1, 0, 0), Optional.empty());
        double before = scene.value(ACCURACY);
        for (int layers = 1; layers <= 4; layers++) {
            List<Cover> more = new ArrayList<>(scene.covers());
            more.add(new Cover.Weave(plate, 0.0009, 0.00635, layers));
            double after = scene.behind(more, scene.obstacles()).value(ACCURACY);
            assertThat(after).isLessThanOrEqualTo(before * (1 + TWICE) + NOTHING);
            before = after;
        }
    }

    /** In deep shade the accuracy is that of 1 % of the unshaded value. */
    @ParameterizedTest
    @MethodSource("seeds")
    void neverGrowsBehindOneMoreSolid(long seed) {
        SeededScene scene = facingUp(seed);
        double open = scene.behind(scene.covers(), List.of()).value(ACCURACY);
        double before = open;
        for (int count = 1; count <= scene.obstacles().size(); count++) {
            double after = scene.behind(scene.covers(), scene.obstacles().subList(0, count))
                    .value(ACCURACY);
            assertThat(after).isLessThanOrEqualTo(before + TWICE * Math.max(before, 0.01 * open) + NOTHING);
            before = after;
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void hasNoPlaneThatBeatsTheOneWithMost(long seed) {
        SeededScene scene = SeededScenes.shaded(seed).emitting(1);
        double open = scene.facing(new Facing.AllRound())
                .behind(scene.covers(), List.of())
                .value(ACCURACY);
        double slack = TWICE * 0.01 * open + NOTHING;
        double most = scene.facing(new Facing.Maximum()).value(ACCURACY);
        double any = scene.facing(new Facing.Direction(LEANING)).value(ACCURACY);
        double round = scene.facing(new Facing.AllRound()).value(ACCURACY);
        assertThat(most).isGreaterThanOrEqualTo(any * (1 - TWICE) - slack);
        assertThat(round).isGreaterThanOrEqualTo(most * (1 - TWICE) - slack);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void staysTheSameWhenEverythingIsTurnedAndMirrored(long seed) {
        SeededScene scene = withoutCorners(SeededScenes.shaded(seed).emitting(1));
        double before = scene.value(ACCURACY);
        double slack = TWICE * 0.01 * scene.behind(scene.covers(), List.of()).value(ACCURACY) + NOTHING;
        for (Motion motion : List.of(new Motion(37 + seed, false), new Motion(0, true), new Motion(-100, true))) {
            assertThat(scene.moved(motion).value(ACCURACY)).isCloseTo(before, within(TWICE * before + slack));
        }
    }

    /** A part of a plane lies along x and y, and cannot be turned. */
    private static SeededScene withoutCorners(SeededScene scene) {
        return scene.behind(
                scene.covers().stream()
                        .filter(cover -> cover.plate().corners().isEmpty())
                        .toList(),
                scene.obstacles());
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

    private static SeededScene facingUp(long seed) {
        return SeededScenes.shaded(seed).emitting(1).facing(new Facing.Direction(LEANING));
    }
}
