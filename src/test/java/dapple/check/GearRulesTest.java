package dapple.check;

import static dapple.check.CheckScenes.SPOT;
import static dapple.check.CheckScenes.TUBE;
import static dapple.check.CheckScenes.checks;
import static dapple.check.CheckScenes.hung;
import static dapple.check.CheckScenes.lamp;
import static dapple.check.CheckScenes.scene;
import static dapple.rig.RigExamples.rig;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dapple.lamp.LampClass;
import dapple.rig.Ballast;
import dapple.rig.FittingFacts;
import dapple.rig.Gear;
import dapple.rig.LampControl;
import dapple.rig.Rig;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which classes need a ballast or have a filament is common practice; what a dimmer does is by handbook values, from memory. */
class GearRulesTest {
    @ParameterizedTest
    @CsvSource({"THERE,HOLDS,there", "BUILT_IN,HOLDS,there", "MISSING,FAILS,missing", "NOT_NEEDED,UNKNOWN,denied"})
    void aTubeHasTheBallastThatItsFittingSays(Ballast ballast, Outcome outcome, String said) {
        Checked checked = check(TradeCheck.BALLAST, rig(tube("L1", Gear.on(ballast))));
        assertThat(checked.outcome()).isEqualTo(outcome);
        assertThat(checked.said()).isEqualTo(said);
        assertThat(checked.words()).containsExactly("L1");
    }

    @Test
    void whetherATubeHasItsBallastCannotBeSaidWithoutARecord() {
        Checked ballast = check(TradeCheck.BALLAST, rig(tube("L1", Gear.on(Ballast.THERE)), tube("L2", Gear.UNKNOWN)));
        assertThat(ballast.outcome()).isEqualTo(Outcome.UNKNOWN);
        assertThat(ballast.words()).containsExactly("L2");
    }

    @Test
    void aLampThatBringsItsBallastHolds() {
        assertThat(check(TradeCheck.BALLAST, rig(spot("L1", LampClass.MERCURY_VAPOUR, Gear.UNKNOWN)))
                        .outcome())
                .isEqualTo(Outcome.HOLDS);
    }

    /** 0.816 of the voltage gives half the light, and takes 0.816^1.6 = 72 % of the power at 0.816^0.42 = 92 % of the kelvin. */
    @Test
    void whatADimmerWouldDoToAFilamentIsTold() {
        Checked dimmer = check(TradeCheck.DIMMER, rig(spot("L1", LampClass.TUNGSTEN_HALOGEN, Gear.UNKNOWN)));
        assertThat(dimmer.outcome()).isEqualTo(Outcome.UNKNOWN);
        assertThat(dimmer.figure().orElseThrow()).isCloseTo(0.722, within(0.001));
        assertThat(dimmer.words()).containsExactly("L1", "72\u00a0%", "92\u00a0%");
    }

    /** At 70 % of the voltage 0.7^3.4 = 29.7 % of the light and 0.7^1.6 = 56.5 % of the power are left, by hand. */
    @Test
    void whatADimmerDoesIsComputed() {
        Checked dimmer = check(TradeCheck.DIMMER, rig(spot("L1", LampClass.TUNGSTEN_HALOGEN, Gear.dimmedTo(0.7))));
        assertThat(dimmer.outcome()).isEqualTo(Outcome.FAILS);
        assertThat(dimmer.figure().orElseThrow()).isCloseTo(0.565, within(0.0005));
        assertThat(dimmer.words())
                .startsWith("L1", "70\u00a0%", "30\u00a0%", "57\u00a0%")
                .hasSize(8);
    }

    @Test
    void ofCarbonItIsNotKnownWhatADimmerDoes() {
        assertThat(check(TradeCheck.DIMMER, rig(spot("L1", LampClass.CARBON_FILAMENT, Gear.dimmedTo(0.7))))
                        .said())
                .isEqualTo("dimmed-somehow");
    }

    @ParameterizedTest
    @CsvSource({"SWITCHED,HOLDS", "DIMMED,FAILS", "THERMOSTAT,FAILS"})
    void anIncandescentLampIsToBeSwitchedOnly(LampControl control, Outcome outcome) {
        assertThat(check(TradeCheck.DIMMER, rig(spot("L1", LampClass.TUNGSTEN_HALOGEN, Gear.by(control))))
                        .outcome())
                .isEqualTo(outcome);
    }

    @Test
    void aDimmedTubeHasNoFilament() {
        assertThat(check(TradeCheck.DIMMER, rig(tube("L1", Gear.by(LampControl.DIMMED))))
                        .outcome())
                .isEqualTo(Outcome.HOLDS);
    }

    private static FittingFacts spot(String tag, LampClass kind, Gear gear) {
        return fed(hung(lamp(tag, kind, SPOT), 0.6, 0.3, 0.9), gear);
    }

    private static FittingFacts tube(String tag, Gear gear) {
        return fed(hung(lamp(tag, LampClass.TUBE_T5, TUBE), 0.6, 0.3, 0.9), gear);
    }

    private static FittingFacts fed(FittingFacts hung, Gear gear) {
        return new FittingFacts(hung.id(), 1, hung.lamp(), hung.hanging().with(gear), Optional.empty(), hung.span());
    }

    private static Checked check(TradeCheck check, Rig rig) {
        return checks(scene(rig, Optional.empty())).of(check);
    }
}
