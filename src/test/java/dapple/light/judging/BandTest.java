package dapple.light.judging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dapple.light.quantity.Interval;
import dapple.light.quantity.Quantity;
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

    /**
     * Guarded acceptance (JCGM 106:2012) of a surface of 38 to 42 °C with ±1 °C, a display of 0.1 °C: U = √(1² +
     * (0.1/√3)²) = 1.0017, so that the acceptance zone is 39.0017 to 40.9983 and what is off lies beyond 36.9983 and
     * 43.0017.
     */
    @ParameterizedTest
    @CsvSource({
        "36.9, TOO_WEAK",
        "37.0, BORDERLINE",
        "39.0, BORDERLINE",
        "39.1, ON_TARGET",
        "40.9, ON_TARGET",
        "41.0, BORDERLINE",
        "43.0, BORDERLINE",
        "43.1, TOO_STRONG"
    })
    void guardsATemperatureByTheSameWidthAtBothEnds(double celsius, State state) {
        MeterUncertainty meter = MeterUncertainty.of(Quantity.SURFACE_TEMPERATURE, 0.1);
        assertThat(new Band(38, 42).judge(meter.around(Quantity.SURFACE_TEMPERATURE, celsius), meter))
                .isEqualTo(new Band.Found(state, false));
    }

    /**
     * Guarded acceptance (JCGM 106:2012) of 10,000 to 20,000 lx with ±10 %; the display's step of 10 lx adds nothing to
     * see. On target needs y − 0.1 y at least 10,000 and y + 0.1 y at most 20,000: 11,111 to 18,182 lx.
     */
    @ParameterizedTest
    @CsvSource({
        "9000, TOO_WEAK",
        "9100, BORDERLINE",
        "11100, BORDERLINE",
        "11200, ON_TARGET",
        "18100, ON_TARGET",
        "18200, BORDERLINE",
        "22300, TOO_STRONG"
    })
    void guardsAnIlluminanceByItsShare(double lux, State state) {
        MeterUncertainty meter = MeterUncertainty.of(Quantity.ILLUMINANCE, 10);
        assertThat(new Band(10_000, 20_000).judge(meter.around(lux), meter).state())
                .isEqualTo(state);
    }

    /** A band of 1 °C is finer than ±1 °C: simple acceptance (JCGM 106:2012), by the value alone. */
    @Test
    void letsTheValueDecideInABandOfOneDegree() {
        MeterUncertainty meter = MeterUncertainty.of(Quantity.AIR_TEMPERATURE, 0.1);
        assertThat(new Band(28, 29).judge(meter.around(Quantity.AIR_TEMPERATURE, 28.9), meter))
                .isEqualTo(new Band.Found(State.ON_TARGET, true));
    }

    @Test
    void hasNothingAgainstFrostWhereItHasNoLowLimit() {
        MeterUncertainty meter = MeterUncertainty.of(Quantity.SURFACE_TEMPERATURE, 0.1);
        assertThat(Band.atMost(30)
                        .judge(meter.around(Quantity.SURFACE_TEMPERATURE, -5), meter)
                        .state())
                .isEqualTo(State.ON_TARGET);
    }

    @ParameterizedTest
    @CsvSource({"-1, 1", "2, 1", "NaN, 1", "1, NaN", "0, Infinity"})
    void refusesLimitsOutOfOrderOrWithoutNumber(double low, double high) {
        assertThatThrownBy(() -> new Band(low, high)).isInstanceOf(IllegalArgumentException.class);
    }
}
