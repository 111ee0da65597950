package dapple.rig;

import static dapple.rig.RigExamples.above;
import static dapple.rig.RigExamples.rig;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dapple.lamp.LampClass;
import dapple.lamp.LampFacts;
import dapple.lamp.LampOutput;
import dapple.lamp.LampShape;
import dapple.light.field.Facing;
import dapple.light.field.Field;
import dapple.light.field.Receiver;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Quantity;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Light ∝ voltage^3.4, power ∝ voltage^1.6: an illuminating engineers' handbook, from memory. */
class DimmedLampTest {
    private static final List<LampOutput> OUTPUTS = List.of(
            RigExamples.output(Quantity.ILLUMINANCE, 10_000),
            RigExamples.output(Quantity.IR_A, 100),
            RigExamples.output(Quantity.IR_B, 50),
            RigExamples.output(Quantity.IRRADIANCE, 200));

    @Test
    void lightFollowsTheHandbook() {
        assertThat(left(Quantity.ILLUMINANCE)).isCloseTo(0.2974, within(0.0002));
    }

    @Test
    void allOfItFollowsThePower() {
        assertThat(left(Quantity.IRRADIANCE)).isCloseTo(0.5651, within(0.0002));
    }

    /** The cooler, the longer the waves. */
    @Test
    void longWavesAreLeftMoreThanShortOnes() {
        assertThat(List.of(left(Quantity.ILLUMINANCE), left(Quantity.IR_A), left(Quantity.IR_B)))
                .isSorted();
    }

    @Test
    void whatIsLeftIsKnownLessWell() {
        double rated = uncertainty(Gear.by(LampControl.SWITCHED));
        assertThat(uncertainty(Gear.dimmedTo(0.7))).isGreaterThan(rated);
    }

    @Test
    void dimmedNobodyKnowsHowFarItIsNotPredicted() {
        RigScene scene = scene(LampClass.TUNGSTEN_HALOGEN, Gear.by(LampControl.DIMMED));
        assertThat(scene.isPredictable()).isFalse();
        assertThat(scene.leftOut()).extracting(LeftOut::why).containsExactly(LeftOut.Why.LAMP_DIMMED);
    }

    @ParameterizedTest
    @EnumSource(
            value = LampClass.class,
            names = {"LED_SPOT", "CARBON_FILAMENT", "TUBE_T5"})
    void whatADimmerLeavesOfOthersIsNotPredicted(LampClass other) {
        assertThat(scene(other, Gear.dimmedTo(0.7)).leftOut())
                .extracting(LeftOut::why)
                .contains(LeftOut.Why.LAMP_DIMMED);
    }

    @Test
    void aThermostatChangesNothingOfWhatItGivesWhileOn() {
        assertThat(amount(Gear.by(LampControl.THERMOSTAT), Quantity.ILLUMINANCE))
                .isEqualTo(amount(Gear.UNKNOWN, Quantity.ILLUMINANCE));
    }

    private static double left(Quantity quantity) {
        return amount(Gear.dimmedTo(0.7), quantity) / amount(Gear.UNKNOWN, quantity);
    }

    private static double amount(Gear gear, Quantity quantity) {
        RigScene scene = scene(LampClass.TUNGSTEN_HALOGEN, gear);
        Receiver below = new Receiver(new Vec(0.6, 0.3, 0.2), new Facing.Direction(Vec.UP));
        return Field.of(scene.scene()).at(below).values().getOrDefault(quantity, Double.NaN);
    }

    private static double uncertainty(Gear gear) {
        return scene(LampClass.TUNGSTEN_HALOGEN, gear)
                .relativeUncertainties()
                .get(0)
                .getOrDefault(Quantity.ILLUMINANCE, 0.0);
    }

    private static RigScene scene(LampClass kind, Gear gear) {
        LampFacts lamp = RigExamples.lamp("L1", kind, Optional.of(new LampShape.Spot(40, Optional.empty())), OUTPUTS);
        FittingFacts hung = RigExamples.fitting(lamp, Optional.of(above(0.6, 0.3, 0.9)));
        return RigScene.of(rig(hung.with(hung.hanging().with(gear))));
    }
}
