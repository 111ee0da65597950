package dapple.check;

import static dapple.check.CheckScenes.SPOT;
import static dapple.check.CheckScenes.check;
import static dapple.check.CheckScenes.checks;
import static dapple.check.CheckScenes.hung;
import static dapple.check.CheckScenes.lamp;
import static dapple.check.CheckScenes.ofUnknownSize;
import static dapple.check.CheckScenes.point;
import static dapple.check.CheckScenes.scene;
import static dapple.rig.RigExamples.output;
import static dapple.rig.RigExamples.rig;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dapple.lamp.LampClass;
import dapple.lamp.LampFacts;
import dapple.lamp.LampShape;
import dapple.light.judging.PointRole;
import dapple.light.quantity.Quantity;
import dapple.prediction.EnclosureScene;
import dapple.rig.Rig;
import dapple.rig.RigExamples;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A spot of 40° 0.9 m above the middle of the floor, which gives a UV index of 4 at 0.3 m, or less. */
class ZoneRulesTest {
    private static final Rig STRONG = spot(4);

    /** The patch is looked for on a lattice: two of its steps on either side of 23 cm. */
    private static final double LATTICE_METRES = 0.02;

    private static Rig spot(double uvIndex) {
        return rig(hung(lamp("L1", LampClass.METAL_HALIDE, SPOT, output(Quantity.UV_INDEX, uvIndex)), 0.6, 0.3, 0.9));
    }

    /**
     * By hand: I ∝ cos^11.14 θ for a beam of 40°, so E ∝ cos^13.14 θ on the plane that has most; 4/9 under the lamp is down to
     * 0.4 at θ = 7.25°, 0.9 m · tan 7.25° = 0.1145 m from the middle: a disc of 0.229 m.
     */
    @Test
    void thePatchOfASpotIsAsWideAsWorkedByHand() {
        Checked patch = check(TradeCheck.PATCH, STRONG);
        assertThat(patch.outcome()).isEqualTo(Outcome.HOLDS);
        assertThat(patch.figure().orElseThrow()).isCloseTo(0.229, within(LATTICE_METRES));
    }

    @Test
    void aLongerBodyThanThePatchFails() {
        Checked patch = checks(scene(STRONG, Optional.of(0.5))).of(TradeCheck.PATCH);
        assertThat(patch.outcome()).isEqualTo(Outcome.FAILS);
        assertThat(patch.said()).isEqualTo("small");
    }

    /** 1/9 under the lamp: nowhere on the floor is it 0.4. */
    @Test
    void withoutAPatchItFails() {
        assertThat(check(TradeCheck.PATCH, spot(1)).said()).isEqualTo("none");
    }

    @Test
    void withoutALengthThePatchCannotBeJudged() {
        Checked patch = checks(scene(STRONG, Optional.empty())).of(TradeCheck.PATCH);
        assertThat(patch.outcome()).isEqualTo(Outcome.UNKNOWN);
        assertThat(patch.said()).isEqualTo("no-length");
    }

    @Test
    void withoutASizeNeitherPatchNorShadeCanBeSaid() {
        Checks checks = checks(ofUnknownSize(scene(STRONG, Optional.of(0.2))));
        assertThat(List.of(
                        checks.of(TradeCheck.PATCH).said(),
                        checks.of(TradeCheck.SHADE).said()))
                .containsExactly("no-size", "no-size");
    }

    /** The inverse-square law: at 0.3 m there are 4, and the ceiling is 3. */
    @Test
    void aPointOverTheCeilingFails() {
        Checked ceiling = checks(scene(STRONG, Optional.of(0.2), point("P1", PointRole.BASKING, 0.6, 0.3, 0.6)))
                .of(TradeCheck.CEILING);
        assertThat(ceiling.outcome()).isEqualTo(Outcome.FAILS);
        assertThat(ceiling.figure().orElseThrow()).isGreaterThanOrEqualTo(4 * (1 - 0.005));
    }

    /** Nearer than any place in reach, 0.1 m below the lamp, 0.2 at 0.3 m is 1.8. */
    @Test
    void belowTheCeilingEverywhereItHolds() {
        Checked ceiling = check(TradeCheck.CEILING, spot(0.2));
        assertThat(ceiling.outcome()).isEqualTo(Outcome.HOLDS);
        assertThat(ceiling.figure().orElseThrow()).isLessThan(1.8);
    }

    /** 2.8 by the inverse-square law 0.1 m below the lamp; its output is known to 10 %, standard, so 3 is possible. */
    @Test
    void whatMayReachTheCeilingCannotBeSaid() {
        Checked ceiling = checks(scene(spot(0.311), Optional.of(0.2), point("P1", PointRole.BASKING, 0.6, 0.3, 0.8)))
                .of(TradeCheck.CEILING);
        assertThat(ceiling.outcome()).isEqualTo(Outcome.UNKNOWN);
        assertThat(ceiling.said()).isEqualTo("may");
    }

    @Test
    void withoutATargetThereIsNoCeiling() {
        assertThat(checks(scene(STRONG, Optional.of(0.2), Optional.empty()))
                        .of(TradeCheck.CEILING)
                        .said())
                .isEqualTo("no-target");
    }

    @Test
    void aLampOfUnknownOutputLeavesTheCeilingOpen() {
        LampFacts silent = RigExamples.lamp("L2", LampClass.TUBE_T5, Optional.of(CheckScenes.TUBE), List.of());
        Rig withUnknown = rig(
                hung(lamp("L1", LampClass.METAL_HALIDE, SPOT, output(Quantity.UV_INDEX, 0.2)), 0.6, 0.3, 0.9),
                hung(silent, 0.3, 0.3, 0.9));
        Checked ceiling = check(TradeCheck.CEILING, withUnknown);
        assertThat(ceiling.outcome()).isEqualTo(Outcome.UNKNOWN);
        assertThat(ceiling.words()).contains("L2");
    }

    @Test
    void besideABeamThereIsShade() {
        assertThat(check(TradeCheck.SHADE, STRONG).outcome()).isEqualTo(Outcome.HOLDS);
    }

    /** 400 at 0.3 m, nearly all round: no place is farther than 1.13 m, so none has less than 400 · 0.09 / 1.27 · cos. */
    @Test
    void whereAllIsLitThereIsNone() {
        LampShape wide = new LampShape.Spot(170, Optional.empty());
        Checked shade = check(
                TradeCheck.SHADE,
                rig(hung(lamp("L1", LampClass.METAL_HALIDE, wide, output(Quantity.UV_INDEX, 400)), 0.6, 0.3, 0.9)));
        assertThat(shade.outcome()).isEqualTo(Outcome.FAILS);
        assertThat(shade.figure()).contains(0.0);
    }

    @Test
    void twoSpotsAtOnePlaceOverlapWhollyAndFail() {
        Checked spots = check(TradeCheck.SPOTS, two(0.6, 0.6));
        assertThat(spots.outcome()).isEqualTo(Outcome.FAILS);
        assertThat(spots.figure()).contains(1.0);
    }

    /** Discs of 0.229 m, 0.6 m apart, have nothing in common. */
    @Test
    void spotsFartherApartThanTheirPatchesHold() {
        Checked spots = check(TradeCheck.SPOTS, two(0.3, 0.9));
        assertThat(spots.outcome()).isEqualTo(Outcome.HOLDS);
        assertThat(spots.figure()).contains(0.0);
    }

    /** A rough step is 0.6 / 16 m, a sixth of a patch: what a third of the patches share is known to about that. */
    @Test
    void spotsAreHeldAgainstOneAnotherRoughlyToo() {
        EnclosureScene scene = scene(two(0.55, 0.65), Optional.of(0.2));
        double fine = checks(scene).of(TradeCheck.SPOTS).figure().orElseThrow();
        Checked roughly = CheckScenes.roughly(scene).of(TradeCheck.SPOTS);
        assertThat(roughly.outcome()).isEqualTo(Outcome.FAILS);
        assertThat(roughly.figure().orElseThrow()).isCloseTo(fine, within(0.17)).isNotEqualTo(fine);
    }

    @Test
    void oneSpotAloneHolds() {
        assertThat(check(TradeCheck.SPOTS, STRONG).said()).isEqualTo("few");
    }

    @Test
    void aSpotOfUnknownPlaceCannotBeHeldAgainstAnother() {
        Rig half = rig(
                hung(lamp("L1", LampClass.METAL_HALIDE, SPOT), 0.6, 0.3, 0.9),
                RigExamples.fitting(lamp("L2", LampClass.METAL_HALIDE, SPOT), Optional.empty()));
        assertThat(check(TradeCheck.SPOTS, half).outcome()).isEqualTo(Outcome.UNKNOWN);
    }

    private static Rig two(double oneX, double otherX) {
        return rig(
                hung(lamp("L1", LampClass.METAL_HALIDE, SPOT), oneX, 0.3, 0.9),
                hung(lamp("L2", LampClass.METAL_HALIDE, SPOT), otherX, 0.3, 0.9));
    }
}
