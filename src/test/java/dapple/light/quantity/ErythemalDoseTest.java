package dapple.light.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

class ErythemalDoseTest {
    /** Half a unit of the last digit of the rows. */
    private static final double LAST_DIGIT = 5e-11;

    private static final double MILLISECONDS_PER_MINUTE = 60_000;

    @ParameterizedTest
    @CsvFileSource(resources = "erythemal-dose-published.csv", useHeadersInDisplayName = true)
    void isOfTheSameSizeInEachUnit(
            double uvIndex, double minutes, double joulesPerSquareMetre, double sed, double uviHours) {
        ErythemalDose dose = ErythemalDose.of(
                new UvIndex(uvIndex), Duration.ofMillis(Math.round(minutes * MILLISECONDS_PER_MINUTE)));

        assertThat(new double[] {dose.joulesPerSquareMetre(), dose.sed(), dose.uviHours()})
                .containsExactly(new double[] {joulesPerSquareMetre, sed, uviHours}, within(LAST_DIGIT));
    }

    @Test
    void addsUp() {
        assertThat(new ErythemalDose(90).plus(new ErythemalDose(10)).sed()).isEqualTo(1);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.1, Double.NaN, Double.POSITIVE_INFINITY})
    void refusesWhatNoDoseCanBe(double joulesPerSquareMetre) {
        assertThatIllegalArgumentException().isThrownBy(() -> new ErythemalDose(joulesPerSquareMetre));
    }

    @Test
    void refusesATimeThatRunsBackwards() {
        assertThatIllegalArgumentException().isThrownBy(() -> ErythemalDose.of(new UvIndex(1), Duration.ofSeconds(-1)));
    }
}
