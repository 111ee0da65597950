package dapple.check;

import static dapple.check.CheckScenes.SPOT;
import static dapple.check.CheckScenes.TUBE;
import static dapple.check.CheckScenes.check;
import static dapple.check.CheckScenes.hung;
import static dapple.check.CheckScenes.lamp;
import static dapple.rig.RigExamples.rig;
import static org.assertj.core.api.Assertions.assertThat;

import dapple.lamp.LampClass;
import dapple.lamp.LampFacts;
import dapple.lamp.SpectrumEvidence;
import dapple.lamp.SpectrumFigures;
import dapple.rig.FittingFacts;
import dapple.rig.Rig;
import dapple.rig.RigExamples;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;

/** What is on file of lamps, and their classes; which classes need a ballast or have a filament is common practice. */
class LampRulesTest {
    private static final SpectrumEvidence REPORT =
            new SpectrumEvidence.Report("Report 12", LocalDate.of(2026, 2, 3), "a laboratory");
    private static final SpectrumEvidence WAIVED =
            new SpectrumEvidence.Waived("Ada Reyes", "for a week", RigExamples.SOME_DAY);

    @Test
    void anUltravioletLampWithoutSpectrumFails() {
        Checked spectrum = check(TradeCheck.SPECTRUM, rig(tube("L1", new SpectrumEvidence.Missing())));
        assertThat(spectrum.outcome()).isEqualTo(Outcome.FAILS);
        assertThat(spectrum.words()).containsExactly("L1");
    }

    @Test
    void aReportIsEnough() {
        assertThat(check(TradeCheck.SPECTRUM, rig(tube("L1", REPORT))).said()).isEqualTo("filed");
    }

    @Test
    void whoSignedAWaiverIsSaid() {
        Checked spectrum = check(TradeCheck.SPECTRUM, rig(tube("L1", WAIVED)));
        assertThat(spectrum.outcome()).isEqualTo(Outcome.HOLDS);
        assertThat(spectrum.words()).containsExactly("L1", "Ada Reyes");
    }

    /** Nothing below 290 nm reaches the ground [gardiner2009]. */
    @Test
    void aSpectrumWithShortWavesFails() {
        SpectrumFigures figures = new SpectrumFigures(4.0, 1000.0, 1.0, null, null, 0.01);
        SpectrumEvidence faulty = new SpectrumEvidence.OnFile(1, "maker", RigExamples.SOME_DAY, figures);
        assertThat(check(TradeCheck.SPECTRUM, rig(tube("L1", faulty))).said()).isEqualTo("short-waves");
    }

    @Test
    void aLampForLightNeedsNoSpectrum() {
        assertThat(check(TradeCheck.SPECTRUM, rig(hung(lamp("L1", LampClass.LED_SPOT, SPOT), 0.6, 0.3, 0.9)))
                        .said())
                .isEqualTo("no-lamp");
    }

    @Test
    void aMetalHalideAloneDoesNotLast() {
        Checked lasting = check(TradeCheck.LASTING, rig(spot("L1", LampClass.METAL_HALIDE)));
        assertThat(lasting.outcome()).isEqualTo(Outcome.FAILS);
    }

    @Test
    void aTubeBesideItDoes() {
        Rig both = rig(spot("L1", LampClass.MERCURY_VAPOUR), tube("L2", REPORT));
        assertThat(check(TradeCheck.LASTING, both).words()).containsExactly("L2");
    }

    private static FittingFacts spot(String tag, LampClass kind) {
        return hung(lamp(tag, kind, SPOT), 0.6, 0.3, 0.9);
    }

    private static FittingFacts tube(String tag, SpectrumEvidence evidence) {
        LampFacts lamp = lamp(tag, LampClass.TUBE_T5, TUBE, evidence);
        return hung(lamp, 0.6, 0.3, 0.9);
    }
}
