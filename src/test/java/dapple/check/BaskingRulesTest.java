package dapple.check;

import static dapple.check.CheckScenes.SPOT;
import static dapple.check.CheckScenes.TUBE;
import static dapple.check.CheckScenes.check;
import static dapple.check.CheckScenes.checks;
import static dapple.check.CheckScenes.hung;
import static dapple.check.CheckScenes.lamp;
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
import dapple.rig.Rig;
import dapple.rig.RigExamples;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class BaskingRulesTest {
    /** The accuracy of the field. */
    private static final double ACCURACY = 0.005;

    private static final LampFacts LIGHT_ALONE =
            lamp("L2", LampClass.LED_SPOT, SPOT, output(Quantity.ILLUMINANCE, 10_000));
    private static final LampFacts ULTRAVIOLET_ALONE =
            lamp("L1", LampClass.ULTRAVIOLET_LED, SPOT, output(Quantity.UV_INDEX, 4));
    private static final LampFacts ULTRAVIOLET = lamp(
            "L1", LampClass.ULTRAVIOLET_LED, SPOT, output(Quantity.UV_INDEX, 4), output(Quantity.ILLUMINANCE, 0.001));

    /** One lamp gives both: where there is most of the one there is most of the other. */
    @Test
    void oneLampGivesAllTogether() {
        Checked together =
                check(TradeCheck.TOGETHER, rig(hung(lamp("L1", LampClass.METAL_HALIDE, SPOT), 0.6, 0.3, 0.9)));
        assertThat(together.outcome()).isEqualTo(Outcome.HOLDS);
        assertThat(together.figure().orElseThrow()).isCloseTo(1, within(ACCURACY));
    }

    /** By cos^13.14 of atan(0.6/0.9) = 33.7° there is 9 % of the ultraviolet 0.6 m beside the lamp. */
    @Test
    void ultravioletElsewhereThanLightFails() {
        Checked together =
                check(TradeCheck.TOGETHER, rig(hung(ULTRAVIOLET, 0.3, 0.3, 0.9), hung(LIGHT_ALONE, 0.9, 0.3, 0.9)));
        assertThat(together.said()).isEqualTo("no-ultraviolet");
        assertThat(together.figure().orElseThrow()).isCloseTo(0.09, within(0.02));
    }

    /** Two beams 0.6 m apart, as above; the warm one gives next to no light, the other next to no heat. */
    @Test
    void heatElsewhereThanUltravioletFails() {
        LampFacts sunny = lamp(
                "L1",
                LampClass.ULTRAVIOLET_LED,
                SPOT,
                output(Quantity.UV_INDEX, 4),
                output(Quantity.ILLUMINANCE, 10_000),
                output(Quantity.IR_A, 0.001));
        LampFacts warm = lamp(
                "L3",
                LampClass.TUNGSTEN_HALOGEN,
                SPOT,
                output(Quantity.IR_A, 100),
                output(Quantity.ILLUMINANCE, 0.001));
        Checked together = check(TradeCheck.TOGETHER, rig(hung(sunny, 0.3, 0.3, 0.9), hung(warm, 0.9, 0.3, 0.9)));
        assertThat(together.said()).isEqualTo("no-heat");
    }

    @Test
    void lightWithoutAnyUltravioletLampFails() {
        assertThat(check(TradeCheck.TOGETHER, rig(hung(LIGHT_ALONE, 0.6, 0.3, 0.9)))
                        .said())
                .isEqualTo("no-lamp");
    }

    @Test
    void lightOfUnknownAmountCannotBeSaid() {
        LampFacts dim = RigExamples.lamp("L2", LampClass.LED_SPOT, Optional.of(SPOT), List.of());
        Rig rig = rig(hung(lamp("L1", LampClass.METAL_HALIDE, SPOT), 0.6, 0.3, 0.9), hung(dim, 0.6, 0.3, 0.9));
        Checked together = check(TradeCheck.TOGETHER, rig);
        assertThat(together.outcome()).isEqualTo(Outcome.UNKNOWN);
        assertThat(together.words()).containsExactly("L2");
    }

    @Test
    void aSpotAloneLeavesTheRestWithSpill() {
        Checked background =
                check(TradeCheck.BACKGROUND, rig(hung(lamp("L1", LampClass.METAL_HALIDE, SPOT), 0.3, 0.3, 0.9)));
        assertThat(background.outcome()).isEqualTo(Outcome.FAILS);
        assertThat(background.figure()).contains(0.0);
    }

    @Test
    void aTubeIsBackgroundByItself() {
        Checked background =
                check(TradeCheck.BACKGROUND, rig(hung(lamp("L1", LampClass.TUBE_T5, TUBE), 0.6, 0.3, 0.9)));
        assertThat(background.outcome()).isEqualTo(Outcome.HOLDS);
        assertThat(background.figure().orElseThrow()).isCloseTo(1, within(1e-12));
    }

    @Test
    void withoutIlluminanceBackgroundCannotBeSaid() {
        assertThat(check(TradeCheck.BACKGROUND, rig(hung(ULTRAVIOLET_ALONE, 0.6, 0.3, 0.9)))
                        .outcome())
                .isEqualTo(Outcome.UNKNOWN);
    }

    /**
     * A lamp that gives alike all round, 0.6 m above a back: E ∝ 1/d², so 0.3 m aside there is 0.36/0.45 = 0.80, and 0.6 m aside
     * 0.50. Its beam is 179.9° wide, cos^0.098 of 26.6° and 45°: 0.99 and 0.97 of that.
     */
    @Test
    void aCompactLampCoversWhatTheInverseSquareLawSays() {
        Checked covers = compact(Optional.of(0.6));
        assertThat(covers.outcome()).isEqualTo(Outcome.HOLDS);
        assertThat(covers.figure().orElseThrow()).isCloseTo(0.791, within(ACCURACY));
    }

    @Test
    void aBodyAsLongAsTwiceItsHeightIsLeftOutAtTheEnds() {
        Checked leaves = compact(Optional.of(1.2));
        assertThat(leaves.outcome()).isEqualTo(Outcome.FAILS);
        assertThat(leaves.figure().orElseThrow()).isCloseTo(0.483, within(ACCURACY));
    }

    @Test
    void withoutALengthACompactLampCannotBeJudged() {
        assertThat(compact(Optional.empty()).said()).isEqualTo("no-length");
    }

    @Test
    void aTubeIsNoCompactLamp() {
        assertThat(check(TradeCheck.COMPACT, rig(hung(lamp("L1", LampClass.TUBE_T5, TUBE), 0.6, 0.3, 0.9)))
                        .said())
                .isEqualTo("none");
    }

    private static Checked compact(Optional<Double> bodyMetres) {
        LampShape allRound = new LampShape.Spot(179.9, Optional.empty());
        Rig rig = rig(hung(lamp("L1", LampClass.COMPACT_FLUORESCENT, allRound), 0.6, 0.3, 0.9));
        return checks(scene(rig, bodyMetres, point("P1", PointRole.BASKING, 0.6, 0.3, 0.3)))
                .of(TradeCheck.COMPACT);
    }
}
