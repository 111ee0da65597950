package dapple.check;

import static dapple.check.CheckScenes.SPOT;
import static dapple.check.CheckScenes.checks;
import static dapple.check.CheckScenes.hung;
import static dapple.check.CheckScenes.lamp;
import static dapple.check.CheckScenes.lit;
import static dapple.check.CheckScenes.scene;
import static dapple.check.CheckScenes.timed;
import static dapple.rig.RigExamples.rig;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dapple.lamp.LampClass;
import dapple.lamp.LampFacts;
import dapple.rig.Rig;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Hours of light by timers, worked by hand. */
class SeasonRuleTest {
    private static final LampFacts LED = lamp("L1", LampClass.LED_SPOT, SPOT);
    private static final LampFacts OTHER = lamp("L2", LampClass.LED_SPOT, SPOT);

    @Test
    void tenHoursWhereTenAreAskedHold() {
        assertThat(season(rig(timed(LED, 8, 18)), 10).outcome()).isEqualTo(Outcome.HOLDS);
    }

    /** The length of the day at 52° N in late December is 7.7 h, computed: 2.3 h too long. */
    @Test
    void tenHoursInADecemberOfTheNorthAreTooLong() {
        Checked season = season(rig(timed(LED, 8, 18)), 7.7);
        assertThat(season.said()).isEqualTo("long");
        assertThat(season.figure().orElseThrow()).isCloseTo(2.3, within(1e-9));
    }

    @Test
    void tenHoursInJuneAreTooShort() {
        assertThat(season(rig(timed(LED, 8, 18)), 16.7).said()).isEqualTo("short");
    }

    @Test
    void halfAnHourOffHolds() {
        assertThat(season(rig(timed(LED, 8, 18)), 10.5).outcome()).isEqualTo(Outcome.HOLDS);
    }

    /** From 8 to 18 and from 16 to 22 is from 8 to 22. */
    @Test
    void whatOverlapsCountsOnce() {
        assertThat(season(rig(timed(LED, 8, 18), timed(OTHER, 16, 22)), 14).outcome())
                .isEqualTo(Outcome.HOLDS);
    }

    @Test
    void aNightOverMidnightCounts() {
        assertThat(season(rig(timed(LED, 20, 6)), 10).outcome()).isEqualTo(Outcome.HOLDS);
    }

    /** Twice the same time: on day and night. */
    @Test
    void alwaysOnIsAWholeDay() {
        assertThat(season(rig(timed(LED, 8, 8)), 24).outcome()).isEqualTo(Outcome.HOLDS);
    }

    @Test
    void aHeaterWithoutLightIsNoDay() {
        Rig heated = rig(timed(LED, 8, 18), timed(lamp("L3", LampClass.INFRARED_EMITTER, SPOT), 0, 23));
        assertThat(season(heated, 10).outcome()).isEqualTo(Outcome.HOLDS);
    }

    @Test
    void aLampWithoutTimerCannotBeSaid() {
        Checked season = season(rig(timed(LED, 8, 18), hung(OTHER, 0.6, 0.3, 0.9)), 10);
        assertThat(season.outcome()).isEqualTo(Outcome.UNKNOWN);
        assertThat(season.words()).containsExactly("L2");
    }

    @Test
    void withoutAPhotoperiodItCannotBeSaid() {
        assertThat(checks(scene(rig(timed(LED, 8, 18)), Optional.empty()))
                        .of(TradeCheck.SEASON)
                        .said())
                .isEqualTo("no-photoperiod");
    }

    private static Checked season(Rig rig, double hours) {
        return checks(lit(scene(rig, Optional.empty()), hours)).of(TradeCheck.SEASON);
    }
}
