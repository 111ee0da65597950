package dapple.practice;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.light.quantity.Quantity;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Common practice, no source: a covered sensor shows at most one step, or 0.1 UVI; a reference lamp keeps within 5 %. */
class ToleranceTest {
    @ParameterizedTest
    @CsvSource({
        "0.1, 0.1, true",
        "0.1, 0.2, false",
        "0.01, 0.1, true",
        "0.01, 0.11, false",
        "0.2, -0.2, true",
        "0.1, NaN, false"
    })
    void aCoveredUvIndexMeterShowsNothing(double resolution, double shown, boolean good) {
        assertThat(Tolerance.ofDarkZero(Quantity.UV_INDEX, resolution).includes(shown))
                .isEqualTo(good);
    }

    @ParameterizedTest
    @CsvSource({"1, 1, true", "1, 2, false", "10, 10, true"})
    void anotherMeterShowsAtMostOneStep(double resolution, double shown, boolean good) {
        assertThat(Tolerance.ofDarkZero(Quantity.ILLUMINANCE, resolution).includes(shown))
                .isEqualTo(good);
    }

    @ParameterizedTest
    @CsvSource({"2.0, 2.1, true", "2.0, 1.9, true", "2.0, 2.11, false", "2.0, 1.89, false", "3.3, 3.465, true"})
    void aReferenceLampKeepsWithinFivePercent(double first, double shown, boolean good) {
        assertThat(Tolerance.ofLamp(first).includes(shown)).isEqualTo(good);
    }
}
