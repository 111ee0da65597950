package dapple.meter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CalibrationFactorsTest {
    private static final CalibrationFactors BY_RANGE =
            new CalibrationFactors(0, List.of(new RangeFactor(2, 1.05), new RangeFactor(10, 1.08)));

    /** A certificate's table by hand: 0 to 2: 1.05, above 2 to 10: 1.08; beyond it the nearest. */
    @ParameterizedTest
    @CsvSource({"-1, 1.05", "0, 1.05", "1.9, 1.05", "2, 1.05", "2.1, 1.08", "10, 1.08", "12, 1.08"})
    void anAmountTakesTheFactorOfItsRange(double displayed, double factor) {
        assertThat(BY_RANGE.at(displayed)).isEqualTo(factor);
    }

    @ParameterizedTest
    @CsvSource({"-0.1, false", "0, true", "10, true", "10.1, false", "NaN, false"})
    void knowsHowFarTheCertificateReaches(double displayed, boolean covered) {
        assertThat(BY_RANGE.covers(displayed)).isEqualTo(covered);
    }

    @Test
    void oneFactorHoldsForAllAmounts() {
        assertThat(CalibrationFactors.of(1.04).at(1e6)).isEqualTo(1.04);
    }

    @Test
    void oneFactorCoversEveryAmount() {
        assertThat(CalibrationFactors.of(1.04).covers(-40)).isTrue();
    }

    @Test
    void rangesBeginWhereTheOneBeforeEnds() {
        assertThat(BY_RANGE.beginOf(1)).isEqualTo(2);
    }

    @Test
    void rangesThatFallAreRefused() {
        assertThatThrownBy(() -> new CalibrationFactors(0, List.of(new RangeFactor(2, 1), new RangeFactor(1, 1))))
                .hasMessage("ranges must rise, was 1.0 after 2.0");
    }

    @Test
    void noRangeIsRefused() {
        assertThatThrownBy(() -> new CalibrationFactors(0, List.of())).hasMessageContaining("one or more");
    }
}
