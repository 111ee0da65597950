package dapple.desk;

import static dapple.rig.RigExamples.above;
import static dapple.rig.RigExamples.fitting;
import static dapple.rig.RigExamples.lamp;
import static dapple.rig.RigExamples.rig;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dapple.lamp.LampClass;
import dapple.rig.FittingFacts;
import dapple.rig.Gear;
import dapple.rig.LampControl;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Lamps of 50 W each. The exponent of the power, 1.6, is the handbook's, from memory. */
class PowerTest {
    private static FittingFacts lampOn(String tag, LampClass lampClass, Gear gear) {
        FittingFacts hung = fitting(lamp(tag, lampClass, Optional.empty()), Optional.of(above(0.6, 0.3, 0.9)));
        return new FittingFacts(
                hung.id(), hung.enclosureId(), hung.lamp(), hung.hanging().with(gear), hung.circuit(), hung.span());
    }

    /** 0.7^1.6 = 0.5652, by hand: 28.3 W of 50 W. */
    @Test
    void aDimmedTungstenHalogenLampTakesWhatItsVoltageLeaves() {
        Power power = Power.of(rig(lampOn("L1", LampClass.TUNGSTEN_HALOGEN, Gear.dimmedTo(0.7))));
        assertThat(power.watts()).isCloseTo(28.26, within(0.01));
        assertThat(power.reckoned()).isOne();
        assertThat(power.unknown()).isZero();
    }

    @Test
    void atItsRatedVoltageItTakesItsRatedPower() {
        assertThat(Power.of(rig(lampOn("L1", LampClass.TUNGSTEN_HALOGEN, Gear.dimmedTo(1))))
                        .watts())
                .isCloseTo(50, within(1e-9));
    }

    @Test
    void whatADimmerOfUnknownVoltageLeavesIsNotKnown() {
        Power power = Power.of(rig(
                lampOn("L1", LampClass.TUNGSTEN_HALOGEN, Gear.by(LampControl.DIMMED)),
                lampOn("L2", LampClass.TUNGSTEN_HALOGEN, Gear.by(LampControl.SWITCHED))));
        assertThat(power).isEqualTo(new Power(50, 1, 0, 1, 50));
    }

    @Test
    void whatADimmerLeavesOfOtherLampsIsNotKnown() {
        assertThat(Power.of(rig(lampOn("L1", LampClass.LED_SPOT, Gear.dimmedTo(0.7)))))
                .isEqualTo(new Power(0, 1, 0, 1, 50));
    }

    @Test
    void aThermostatLeavesTheRatedPowerWhileItIsOn() {
        assertThat(Power.of(rig(lampOn("L1", LampClass.CARBON_FILAMENT, Gear.by(LampControl.THERMOSTAT)))))
                .isEqualTo(new Power(50, 0, 0, 0, 0));
    }
}
