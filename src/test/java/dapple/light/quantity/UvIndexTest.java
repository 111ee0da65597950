package dapple.light.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

class UvIndexTest {
    /** The definition is exact; only the last bits of a product of doubles may differ. */
    private static final double ROUNDING = 1e-12;

    @ParameterizedTest
    @CsvFileSource(resources = "uv-index-published.csv", useHeadersInDisplayName = true)
    void isFortyTimesTheErythemalIrradiance(double erythemalWattsPerSquareMetre, double uvIndex, String source) {
        assertThat(UvIndex.of(new ErythemalIrradiance(erythemalWattsPerSquareMetre))
                        .index())
                .as(source)
                .isCloseTo(uvIndex, within(ROUNDING));
    }

    @Test
    void givesBackItsIrradiance() {
        ErythemalIrradiance irradiance = new ErythemalIrradiance(0.0923);
        assertThat(UvIndex.of(irradiance).irradiance().wattsPerSquareMetre())
                .isCloseTo(irradiance.wattsPerSquareMetre(), within(ROUNDING));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.1, Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void refusesWhatNoIndexCanBe(double index) {
        assertThatThrownBy(() -> new UvIndex(index))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("UV index must be");
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.001, Double.NaN, Double.POSITIVE_INFINITY})
    void refusesWhatNoIrradianceCanBe(double wattsPerSquareMetre) {
        assertThatThrownBy(() -> new ErythemalIrradiance(wattsPerSquareMetre))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
