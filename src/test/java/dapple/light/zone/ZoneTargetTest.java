package dapple.light.zone;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dapple.light.quantity.Interval;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ZoneTargetTest {
    @ParameterizedTest
    @CsvSource({
        "0, SHADE",
        "0.3, SHADE",
        "0.31, GRADIENT",
        "2.89, GRADIENT",
        "2.9, BASKING",
        "7.4, BASKING",
        "7.41, ABOVE_TARGET",
        "9, ABOVE_TARGET",
        "9.01, OVER_CEILING"
    })
    void limitsBelongToTheZoneThatTheyAreNamedFor(double amount, Zone zone) {
        assertThat(new ZoneTarget(new Interval(2.9, 7.4), 0.3, 9).of(amount)).isEqualTo(zone);
    }

    @ParameterizedTest
    @CsvSource({"1, BASKING", "0.99, SHADE", "1.01, OVER_CEILING"})
    void whereLimitsCoincideBaskingComesBeforeShade(double amount, Zone zone) {
        assertThat(new ZoneTarget(new Interval(1, 1), 1, 1).of(amount)).isEqualTo(zone);
    }

    @ParameterizedTest
    @CsvSource({"3, 9", "-0.1, 9", "NaN, 9", "0.3, 7", "0.3, NaN", "0.3, Infinity"})
    void limitsOutOfOrderAreRefused(double shadeHigh, double ceiling) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new ZoneTarget(new Interval(2.9, 7.4), shadeHigh, ceiling));
    }

    @ParameterizedTest
    @CsvSource({"NaN", "-1", "Infinity"})
    void amountsThatAreNoneAreRefused(double amount) {
        ZoneTarget target = new ZoneTarget(new Interval(2.9, 7.4), 0.3, 9);
        assertThatIllegalArgumentException().isThrownBy(() -> target.of(amount));
    }
}
