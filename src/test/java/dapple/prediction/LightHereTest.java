package dapple.prediction;

import static dapple.prediction.SceneExamples.scene;
import static dapple.rig.RigExamples.above;
import static dapple.rig.RigExamples.covered;
import static dapple.rig.RigExamples.fitting;
import static dapple.rig.RigExamples.furnished;
import static dapple.rig.RigExamples.mesh;
import static dapple.rig.RigExamples.rig;
import static dapple.rig.RigExamples.spot;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dapple.light.field.Facing;
import dapple.light.field.Field;
import dapple.light.field.Receiver;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Interval;
import dapple.light.quantity.Quantity;
import dapple.light.zone.Zone;
import dapple.prediction.LightHere.FromLamp;
import dapple.prediction.LightHere.Lit;
import dapple.prediction.LightHere.Nothing;
import dapple.prediction.LightHere.Why;
import dapple.rig.FurnitureShape.Block;
import dapple.rig.Rig;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Spots 0.9 m above the floor; each gives a UV index of 4 at 0.3 m straight below. */
class LightHereTest {
    private static final Rig ONE = rig(fitting(spot("L1"), Optional.of(above(0.6, 0.3, 0.9))));
    private static final Rig TWO = furnished(
            covered(
                    rig(
                            fitting(spot("L1"), Optional.of(above(0.4, 0.3, 0.9))),
                            fitting(spot("L2"), Optional.of(above(0.8, 0.3, 0.9)))),
                    mesh(Optional.of(0.85))),
            new Block(new Vec(0.9, 0.1, 0.2), new Vec(1.1, 0.5, 0.25), 0));

    /** Sums of two numbers, each rounded once. */
    private static final double ROUNDING = 1e-6;

    static Stream<Vec> places() {
        return Stream.of(
                new Vec(0.6, 0.3, 0.5),
                new Vec(0.1, 0.1, 0.1),
                new Vec(0.4, 0.3, 0.8),
                new Vec(0.8, 0.3, 0.1),
                new Vec(1.2, 0.6, 0));
    }

    private static Lit lit(Rig rig, Vec place) {
        return (Lit) LightHere.at(scene(rig), Quantity.UV_INDEX, place);
    }

    private static Why why(Rig rig, Quantity quantity, Vec place) {
        return ((Nothing) LightHere.at(scene(rig), quantity, place)).why();
    }

    @ParameterizedTest
    @MethodSource("places")
    void whatTheLampsGiveAddsUpToTheWhole(Vec place) {
        Lit lit = lit(TWO, place);
        assertThat(lit.lamps().stream().mapToDouble(FromLamp::amount).sum())
                .isCloseTo(lit.predicted().amount(), within(ROUNDING));
        assertThat(lit.lamps().stream().mapToDouble(FromLamp::share).sum()).isCloseTo(1, within(ROUNDING));
    }

    @ParameterizedTest
    @MethodSource("places")
    void theAmountIsWhatTheEngineSaysOfThePlace(Vec place) {
        double engine = Field.of(scene(TWO).rig().scene())
                .at(new Receiver(place, new Facing.Maximum()))
                .values()
                .getOrDefault(Quantity.UV_INDEX, Double.NaN);
        assertThat(lit(TWO, place).predicted().amount()).isCloseTo(engine, within(ROUNDING));
    }

    /** On the plane that has most, not on the one that faces each lamp: there each alone would give more. */
    @Test
    void everyLampIsLookedAtOnThePlaneOfTheWhole() {
        Vec place = new Vec(0.59, 0.3, 0.3);
        Lit lit = lit(TWO, place);
        double onThatPlane = ofTheFirstLamp(place, new Facing.Direction(lit.facing()));
        double facingIt = ofTheFirstLamp(place, new Facing.TowardsLamp("L1"));
        assertThat(lit.lamps().get(0).amount()).isCloseTo(onThatPlane, within(0.005 * onThatPlane));
        assertThat(lit.lamps().get(0).amount()).isLessThan(0.99 * facingIt);
    }

    private static double ofTheFirstLamp(Vec place, Facing facing) {
        return Field.of(scene(TWO).rig().scene())
                .at(new Receiver(place, facing))
                .byLamp()
                .get(0)
                .getOrDefault(Quantity.UV_INDEX, Double.NaN);
    }

    /** Half each by symmetry, whatever the lamps are. */
    @Test
    void midwayBetweenTwoEqualLampsEachGivesHalf() {
        assertThat(lit(TWO, new Vec(0.6, 0.3, 0.5)).lamps())
                .allSatisfy(lamp -> assertThat(lamp.share()).isCloseTo(0.5, within(0.005)));
    }

    @Test
    void inTheDarkNoLampHasAShare() {
        Lit dark = lit(TWO, new Vec(1.0, 0.3, 0.1));
        assertThat(dark.predicted().amount()).isZero();
        assertThat(dark.lamps()).extracting(FromLamp::share).containsExactly(0.0, 0.0);
        assertThat(dark.zone()).contains(Zone.SHADE);
    }

    /** The inverse-square law: at twice the distance a quarter of 4. */
    @Test
    void followsTheInverseSquareLaw() {
        assertThat(lit(ONE, new Vec(0.6, 0.3, 0.3)).predicted().amount()).isCloseTo(1, within(0.005));
    }

    @Test
    void theIntervalIsThatOfAPointThere() {
        Predicted point = PredictedLight.of(scene(ONE).rig())
                .at(SceneExamples.BASKING)
                .getOrDefault(Quantity.UV_INDEX, new Predicted(0, new Interval(0, 0), true));
        assertThat(lit(ONE, new Vec(0.6, 0.3, 0.6)).predicted()).isEqualTo(point);
    }

    /** The target: basking 0.4 to 1.5, ceiling 3. */
    @Test
    void saysWhichZoneItIs() {
        assertThat(lit(ONE, new Vec(0.6, 0.3, 0.3)).zone()).contains(Zone.BASKING);
        assertThat(lit(ONE, new Vec(0.6, 0.3, 0.7)).zone()).contains(Zone.OVER_CEILING);
    }

    @Test
    void saysWhyNothingIsKnown() {
        assertThat(why(TWO, Quantity.UV_INDEX, new Vec(1, 0.3, 0.22))).isEqualTo(Why.NOT_OPEN);
        assertThat(why(ONE, Quantity.UV_INDEX, new Vec(0.6, 0.3, 0.9))).isEqualTo(Why.OUTSIDE);
        assertThat(why(ONE, Quantity.IR_B, new Vec(0.6, 0.3, 0.3))).isEqualTo(Why.NOT_PREDICTED);
        assertThat(why(Rig.empty(1), Quantity.UV_INDEX, new Vec(0.6, 0.3, 0.3))).isEqualTo(Why.NOT_PREDICTED);
    }
}
