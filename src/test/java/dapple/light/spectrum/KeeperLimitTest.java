package dapple.light.spectrum;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dapple.light.spectrum.KeeperLimit.Binding;
import org.junit.jupiter.api.Test;

class KeeperLimitTest {
    /** Quotients of round numbers: only the last bits may differ. */
    private static final double ROUNDING = 1e-12;

    /** 30 J/m² at 0.005 W/m² are 6000 s, 10,000 J/m² at 2 W/m² are 5000 s. */
    @Test
    void isTheExposureOverTheIrradiance() {
        KeeperLimit limit = KeeperLimit.of(0.005, 2);
        assertThat(limit.actinicMinutes().orElseThrow()).isCloseTo(100, within(ROUNDING));
        assertThat(limit.uvaEyeMinutes().orElseThrow()).isCloseTo(5000 / 60.0, within(ROUNDING));
        assertThat(limit.binding()).contains(Binding.UVA_EYE);
        assertThat(limit.minutes()).isEqualTo(limit.uvaEyeMinutes());
    }

    @Test
    void namesTheOtherLimitWhereThatComesFirst() {
        assertThat(KeeperLimit.of(0.005, 1).binding()).contains(Binding.ACTINIC);
    }

    @Test
    void isAbsentWhereItTakesMoreThanEightHours() {
        double inEightHours = 30 / 28_800.0;
        assertThat(KeeperLimit.of(inEightHours * 1.001, 0).minutes().orElseThrow())
                .isLessThan(480);
        assertThat(KeeperLimit.of(inEightHours * 0.999, 10_000 / 28_800.0 * 0.999)
                        .minutes())
                .isEmpty();
    }

    @Test
    void isAbsentInTheDark() {
        assertThat(KeeperLimit.of(0, 0).minutes()).isEmpty();
        assertThat(KeeperLimit.of(0, 0).binding()).isEmpty();
    }
}
