package dapple.check;

import static dapple.check.CheckScenes.SPOT;
import static dapple.check.CheckScenes.check;
import static dapple.check.CheckScenes.hung;
import static dapple.check.CheckScenes.lamp;
import static dapple.rig.RigExamples.covered;
import static dapple.rig.RigExamples.rig;
import static dapple.rig.RigExamples.sheet;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dapple.lamp.LampClass;
import dapple.light.cover.Filter;
import dapple.rig.Cover;
import dapple.rig.CoverMaterial;
import dapple.rig.Rig;
import dapple.rig.RigExamples;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A spot 0.9 m above the floor, with a pane at 0.8 m. */
class PaneRuleTest {
    private static final Rig SPOT_ABOVE = rig(hung(lamp("L1", LampClass.METAL_HALIDE, SPOT), 0.6, 0.3, 0.9));

    /** One sheet of window glass passes about 4 % of UVB [gehrmann1987]. */
    @Test
    void windowGlassFails() {
        Checked pane = check(TradeCheck.PANE, covered(SPOT_ABOVE, sheet(0.04)));
        assertThat(pane.outcome()).isEqualTo(Outcome.FAILS);
        assertThat(pane.figure()).contains(0.04);
    }

    /** Film for greenhouses passes 85 to 92 %, from memory. */
    @Test
    void filmThatPassesMostHolds() {
        assertThat(check(TradeCheck.PANE, covered(SPOT_ABOVE, sheet(0.88))).outcome())
                .isEqualTo(Outcome.HOLDS);
    }

    /** Each of two layers takes the same share: 0.6 · 0.6. */
    @Test
    void twoLayersPassTheProduct() {
        Checked pane = check(TradeCheck.PANE, covered(SPOT_ABOVE, sheet(0.6).withLayers(2)));
        assertThat(pane.outcome()).isEqualTo(Outcome.FAILS);
        assertThat(pane.figure().orElseThrow()).isCloseTo(0.36, within(1e-12));
    }

    @Test
    void aPaneThatNobodyMeasuredCannotBeSaid() {
        Checked pane = check(TradeCheck.PANE, covered(SPOT_ABOVE, pane(Optional.of(0.8), Optional.empty())));
        assertThat(pane.outcome()).isEqualTo(Outcome.UNKNOWN);
        assertThat(pane.said()).isEqualTo("not-known");
    }

    @Test
    void aPaneOfUnknownHeightCannotBeSaid() {
        assertThat(check(TradeCheck.PANE, covered(SPOT_ABOVE, pane(Optional.empty(), Optional.empty())))
                        .said())
                .isEqualTo("no-place");
    }

    @Test
    void aPaneOverTheOtherEndHolds() {
        Filter.Rectangle far = new Filter.Rectangle(1.0, 0, 1.2, 0.6);
        assertThat(check(TradeCheck.PANE, covered(SPOT_ABOVE, pane(Optional.of(0.8), Optional.of(far))))
                        .said())
                .isEqualTo("beside");
    }

    @Test
    void aMeshIsNoPane() {
        assertThat(check(TradeCheck.PANE, covered(SPOT_ABOVE, RigExamples.mesh(Optional.of(0.8))))
                        .said())
                .isEqualTo("none");
    }

    private static Cover pane(Optional<Double> height, Optional<Filter.Rectangle> over) {
        return new Cover("pane", height, over, new CoverMaterial.Passing(false, Map.of()), 1);
    }
}
