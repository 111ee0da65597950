package dapple.light.judging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dapple.light.quantity.Interval;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Guarded acceptance as JCGM 106:2012 describes it, on numbers worked by hand. */
class BandTest {
    private static final MeterUncertainty FINE = new MeterUncertainty(0, 1e-6);
    private static final Band BAND = new Band(2, 3);

    @ParameterizedTest
    @CsvSource({
        // value, interval, state: the first is a reading of 2.5 with 10 %, so 2.25 to 2.75
        "2.5, 2.25, 2.75, ON_TARGET",
        "2.2, 2.0, 2.4, ON_TARGET",
        "2.8, 2.6, 3.0, ON_TARGET",
        "2.1, 1.9, 2.3, BORDERLINE",
        "1.9, 1.7, 2.1, BORDERLINE",
        "1.8, 1.6, 2.0, BORDERLINE",
        "2.9, 2.6, 3.2, BORDERLINE",
        "3.3, 3.0, 3.6, BORDERLINE",
        "2.5, 1.5, 3.5, BORDERLINE",
        "1.5, 1.2, 1.8, TOO_WEAK",
        "3.6, 3.2, 4.0, TOO_STRONG"
    })
    void acceptsOnlyWhatLiesInsideWithItsWholeInterval(double amount, double low, double high, State state) {
        MeasuredAmount measured = new MeasuredAmount(amount, new Interval(low, high));
        assertThat(BAND.judge(measured, FINE)).isEqualTo(new Band.Found(state, false));
    }

    /** Zone 2 by the shade method, a hand-held meter of ±20 % with a step of 0.1: the interval is 0.63 to 0.97. */
    @Test
    void letsTheValueDecideWhereTheBandIsFinerThanTheMeter() {
        MeterUncertainty handHeld = MeterUncertainty.ofResolution(0.1);
        assertThat(new Band(0.7, 1.0).judge(handHeld.around(0.8), handHeld))
                .isEqualTo(new Band.Found(State.ON_TARGET, true));
    }

    @ParameterizedTest
    @CsvSource({"0.6, TOO_WEAK", "0.7, ON_TARGET", "1.0, ON_TARGET", "1.1, TOO_STRONG"})
    void judgesByValueInAFineBand(double uvi, State state) {
        MeterUncertainty handHeld = MeterUncertainty.ofResolution(0.1);
        assertThat(new Band(0.7, 1.0).judge(handHeld.around(uvi), handHeld).state())
                .isEqualTo(state);
    }

    @Test
    void takesALowLimitOfZeroForNone() {
        MeterUncertainty handHeld = MeterUncertainty.ofResolution(0.1);
        assertThat(Band.atMost(0.29).judge(handHeld.around(0), handHeld).state())
                .isEqualTo(State.ON_TARGET);
    }

    @ParameterizedTest
    @CsvSource({"-1, 1", "2, 1", "NaN, 1", "1, NaN", "0, Infinity"})
    void refusesLimitsOutOfOrderOrWithoutNumber(double low, double high) {
        assertThatThrownBy(() -> new Band(low, high)).isInstanceOf(IllegalArgumentException.class);
    }
}
