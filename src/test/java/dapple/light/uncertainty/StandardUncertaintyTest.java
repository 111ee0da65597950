package dapple.light.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dapple.light.judging.MeterUncertainty;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class StandardUncertaintyTest {
    private static final double ROUNDING = 1e-12;

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.1, 3, 12})
    void isHalfOfWhatAMeterSays(double amount) {
        MeterUncertainty meter = MeterUncertainty.ofResolution(0.1);
        assertThat(2 * StandardUncertainty.of(meter).at(amount)).isCloseTo(meter.expanded(amount), within(ROUNDING));
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "-0.1, 1", "11, 0", "NaN, 1", "1, NaN", "0.1, -1", "0.1, Infinity"})
    void refusesWhatIsNoUncertainty(double relative, double absolute) {
        assertThatThrownBy(() -> new StandardUncertainty(relative, absolute))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void addsItsPartsAsSquares() {
        assertThat(new StandardUncertainty(0.3, 4).at(10)).isCloseTo(5, within(ROUNDING));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.1, 10.1, Double.NaN, Double.POSITIVE_INFINITY})
    void aSceneRefusesThemToo(double wrong) {
        assertThatThrownBy(() -> new SceneUncertainty(wrong, 0, 0, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new SceneUncertainty(0, wrong, 0, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new SceneUncertainty(0, 0, wrong, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new SceneUncertainty(0, 0, 0, wrong)).isInstanceOf(IllegalArgumentException.class);
    }
}
