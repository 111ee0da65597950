package dapple.check;

import static dapple.check.CheckScenes.SPOT;
import static dapple.check.CheckScenes.TUBE;
import static dapple.check.CheckScenes.check;
import static dapple.check.CheckScenes.hung;
import static dapple.check.CheckScenes.lamp;
import static dapple.rig.RigExamples.covered;
import static dapple.rig.RigExamples.furnished;
import static dapple.rig.RigExamples.rig;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dapple.lamp.LampClass;
import dapple.light.cover.Filter;
import dapple.light.geometry.Vec;
import dapple.rig.Cover;
import dapple.rig.FittingFacts;
import dapple.rig.FurnitureShape;
import dapple.rig.FurnitureShape.Block;
import dapple.rig.FurnitureShape.Branch;
import dapple.rig.FurnitureShape.Post;
import dapple.rig.Rig;
import dapple.rig.RigExamples;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** A hot lamp 0.9 m above the floor; 30 cm from what burns are common practice, no source. */
class FireRuleTest {
    private static final FittingFacts HALOGEN = hung(lamp("L1", LampClass.TUNGSTEN_HALOGEN, SPOT), 0.6, 0.3, 0.9);

    @Test
    void aHotLampTwentyCentimetresFromABoardFails() {
        Checked fire = check(TradeCheck.FIRE, furnished(rig(HALOGEN), board(0.7)));
        assertThat(fire.outcome()).isEqualTo(Outcome.FAILS);
        assertThat(fire.figure().orElseThrow()).isCloseTo(0.2, within(1e-9));
    }

    @Test
    void atThirtyCentimetresItHolds() {
        assertThat(check(TradeCheck.FIRE, furnished(rig(HALOGEN), board(0.6))).outcome())
                .isEqualTo(Outcome.HOLDS);
    }

    @Test
    void aMeshFiveCentimetresBelowAHotLampFails() {
        Checked fire = check(TradeCheck.FIRE, covered(rig(HALOGEN), RigExamples.mesh(Optional.of(0.85))));
        assertThat(fire.said()).isEqualTo("close");
        assertThat(fire.figure().orElseThrow()).isCloseTo(0.05, within(1e-9));
    }

    @Test
    void aTubeMayLieOnAMesh() {
        Rig lying = covered(
                rig(hung(lamp("L1", LampClass.TUBE_T5, TUBE), 0.6, 0.3, 0.8)), RigExamples.mesh(Optional.of(0.8)));
        assertThat(check(TradeCheck.FIRE, lying).said()).isEqualTo("nothing");
    }

    @Test
    void aLampOfUnknownPlaceCannotBeSaid() {
        Rig somewhere = rig(RigExamples.fitting(lamp("L1", LampClass.TUNGSTEN_HALOGEN, SPOT), Optional.empty()));
        assertThat(check(TradeCheck.FIRE, somewhere).outcome()).isEqualTo(Outcome.UNKNOWN);
    }

    @Test
    void aCoverOfUnknownHeightCannotBeSaid() {
        Rig under = covered(rig(HALOGEN), RigExamples.mesh(Optional.empty()));
        assertThat(check(TradeCheck.FIRE, under).said()).isEqualTo("no-height");
    }

    @Test
    void withoutALampNothingBurns() {
        assertThat(check(TradeCheck.FIRE, Rig.empty(1)).said()).isEqualTo("no-lamp");
    }

    @ParameterizedTest
    @EnumSource
    void everyClassHasADistance(LampClass kind) {
        assertThat(FireDistance.of(kind).furnitureMetres()).isPositive();
    }

    /** By Pythagoras, from a point at 0.6 / 0.3 / 0.9. */
    static Stream<Arguments> distances() {
        return Stream.of(
                Arguments.of(new Block(new Vec(0.9, 0.7, 0), new Vec(1, 0.8, 0.9), 0), 0.5),
                Arguments.of(new Block(new Vec(0, 0.9, 0), new Vec(1.2, 1.1, 0.9), 90), 0.1),
                Arguments.of(new Post(new Vec(0.6, 0.8, 0), 0.5, 0.2), 0.5),
                Arguments.of(new Post(new Vec(0.6, 0.3, 0), 0.5, 0.2), 0.4),
                Arguments.of(new Branch(new Vec(0, 0.3, 0.5), new Vec(1.2, 0.3, 0.5), 0.05), 0.35),
                Arguments.of(new Branch(new Vec(0, 0.3, 0.1), new Vec(0.3, 0.3, 0.5), 0.1), 0.4),
                Arguments.of(new Branch(new Vec(0, 0.3, 0.88), new Vec(1.2, 0.3, 0.88), 0.05), 0.0));
    }

    @ParameterizedTest
    @MethodSource("distances")
    void distancesAreThoseOfPythagoras(FurnitureShape shape, double metres) {
        assertThat(LampBody.of(HALOGEN).orElseThrow().distance(shape)).isCloseTo(metres, within(1e-9));
    }

    /** The end of a tube of 0.55 m lies 0.275 m from its middle: 0.025 m from a board that begins at 0.9 m. */
    @Test
    void theEndOfATubeIsWhatIsNear() {
        LampBody tube = LampBody.of(hung(lamp("L1", LampClass.TUBE_T5, TUBE), 0.6, 0.3, 0.9))
                .orElseThrow();
        assertThat(tube.distance(new Block(new Vec(0.9, 0.2, 0.8), new Vec(1, 0.4, 1), 0)))
                .isCloseTo(0.025, within(1e-9));
    }

    /** 0.3 m aside and 0.4 m above the edge of a cover: 0.5 m. */
    @Test
    void aCoverEndsAtItsEdge() {
        Cover mesh = RigExamples.mesh(Optional.of(0.5));
        Cover beside = new Cover(
                "mesh", Optional.of(0.5), Optional.of(new Filter.Rectangle(0.9, 0, 1.2, 0.6)), mesh.material(), 1);
        assertThat(LampBody.of(HALOGEN).orElseThrow().distance(beside, 0.5)).isCloseTo(0.5, within(1e-9));
    }

    private static FurnitureShape board(double top) {
        return new Block(new Vec(0.4, 0.1, 0), new Vec(0.8, 0.5, top), 0);
    }
}
