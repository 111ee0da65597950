package dapple.light.metrology;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dapple.light.judging.MeterUncertainty;
import dapple.light.metrology.Evaluation.Expanded;
import dapple.light.metrology.Evaluation.Rectangular;
import dapple.light.metrology.Evaluation.Scatter;
import dapple.light.metrology.Evaluation.Standard;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The calibration of an end gauge, JCGM 100:2008, Annex H.1 (pages 78 to 83; inputs and results from memory, in agreement
 * with the rounded ones that other tests here have from a secondary text), and a UV index meter worked by hand.
 */
class UncertaintyBudgetTest {
    private static final double ROUNDING = 1e-12;

    /** Far below a nanometre: the example has no display. */
    private static final double NO_STEP = 1e-6;

    /** Half of the last digit that the example prints. */
    private static final double NANOMETRE = 0.5;

    private static final double TENTH = 0.05;

    private static UncertaintyBudget endGauge() {
        return new UncertaintyBudget(
                List.of(
                        amount(Cause.CALIBRATION, new Standard(25, 18)),
                        amount(Cause.REPEATS, new Standard(9.7, 25.6)),
                        amount(Cause.TEMPERATURE, new Standard(2.9, 50)),
                        amount(Cause.TEMPERATURE, new Standard(16.6, 2))),
                NO_STEP);
    }

    private static Contribution amount(Cause cause, Evaluation evaluation) {
        return Contribution.ofAmount(cause, evaluation);
    }

    private static Contribution share(Cause cause, Evaluation evaluation) {
        return Contribution.ofShare(cause, evaluation);
    }

    /** H.1.4: u_c = 32 nm. */
    @Test
    void combinesAsTheEndGaugeDoes() {
        assertThat(endGauge().combined(50e6)).isCloseTo(32, within(NANOMETRE));
    }

    /** H.1.6: 16.7, which is cut to 16; with u_c not rounded to 32 it is 16.8. */
    @Test
    void hasTheDegreesOfFreedomOfTheEndGauge() {
        assertThat(endGauge().degreesOfFreedom(50e6)).isCloseTo(16.7, within(2 * TENTH));
    }

    /** H.1.6: t₉₉(16) = 2.92, U₉₉ = 93 nm. */
    @Test
    void expandsAsTheEndGaugeDoes() {
        double factor = UncertaintyBudget.studentFactor(endGauge().degreesOfFreedom(50e6), 0.99);
        assertThat(factor).isCloseTo(2.92, within(0.005));
        assertThat(factor * endGauge().combined(50e6)).isCloseTo(93, within(NANOMETRE));
    }

    /** H.1.3.2: the mean of 5 differences of which each scatters by 13 nm: 5.8 nm; 24 degrees of freedom come from elsewhere. */
    @Test
    void dividesTheScatterByTheRootOfTheRepeats() {
        assertThat(new Scatter(13, 5).standard()).isCloseTo(5.8, within(TENTH));
        assertThat(new Scatter(13, 5).degreesOfFreedom()).isEqualTo(4);
    }

    /** H.1.3.4: ±1e-6 per °C, rectangular: 0.58e-6 per °C; and H.1.3.2: 20 nm at three times: 6.7 nm. */
    @Test
    void turnsHalfWidthsAndCertificatesIntoStandardUncertainties() {
        assertThat(new Rectangular(1e-6).standard()).isCloseTo(0.58e-6, within(0.005e-6));
        assertThat(new Expanded(20, 3).standard()).isCloseTo(6.7, within(TENTH));
    }

    /** JCGM 100:2008, table G.2, 95 %: from memory. */
    @ParameterizedTest
    @CsvSource({"1, 12.71", "2, 4.30", "4, 2.78", "10, 2.23", "20, 2.09", "50, 2.01"})
    void hasStudentsFactors(double degreesOfFreedom, double printed) {
        assertThat(UncertaintyBudget.studentFactor(degreesOfFreedom + 0.9, 0.95))
                .isCloseTo(printed, within(0.005));
    }

    /**
     * By hand: calibration 10 % (k = 2), mismatch ±10 % rectangular, angle 3 %, position 5 mm at 300 mm with the power 1.2,
     * temperature 1 %, display 0.1, at UV index 4:
     * √(0.05² + 0.1²/3 + 0.03² + (1.2 · 5/300)² + 0.01²) = 0.085049 of 4 = 0.340196; with 0.1/√12 = 0.028868: 0.341419.
     */
    @Test
    void combinesAHandHeldReading() {
        assertThat(handHeld().combined(4)).isCloseTo(0.341419, within(5e-7));
    }

    private static UncertaintyBudget handHeld() {
        return new UncertaintyBudget(
                List.of(
                        share(Cause.CALIBRATION, new Expanded(0.10, 2)),
                        share(Cause.SPECTRAL_MISMATCH, new Rectangular(0.10)),
                        share(Cause.ANGLE, new Standard(0.03)),
                        share(Cause.POSITION, new Standard(5.0 / 300)).withSensitivity(-1.2),
                        share(Cause.TEMPERATURE, new Standard(0.01))),
                0.1);
    }

    @Test
    void takesTwoWhereAllIsSure() {
        assertThat(handHeld().degreesOfFreedom(4)).isInfinite();
        assertThat(handHeld().expanded(4)).isCloseTo(2 * handHeld().combined(4), within(ROUNDING));
    }

    /** Student's factor for two degrees of freedom, 4.30, for what is nearly all from three readings. */
    @Test
    void takesStudentsFactorForFewRepeats() {
        UncertaintyBudget few = new UncertaintyBudget(List.of(share(Cause.REPEATS, new Scatter(0.2, 3))), 0.01);
        assertThat(few.coverageFactor(5)).isCloseTo(4.30, within(0.005));
    }

    @Test
    void keepsWhatReadingsShareApart() {
        double shared = handHeld().shared(4);
        double own = handHeld().own(4);
        assertThat(shared).isCloseTo(4 * Math.sqrt(0.0025 + 0.01 / 3), within(ROUNDING));
        assertThat(Math.hypot(shared, own)).isCloseTo(handHeld().combined(4), within(ROUNDING));
        assertThat(handHeld().ownPart().at(4)).isCloseTo(own, within(ROUNDING));
        assertThat(handHeld().ownInLogarithm(4)).isCloseTo(own / 4, within(ROUNDING));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.1, 1, 12})
    void judgesAsItExpands(double amount) {
        MeterUncertainty judged = handHeld().forJudging();
        assertThat(judged.expanded(amount)).isCloseTo(handHeld().expanded(amount), within(ROUNDING));
        assertThat(2 * handHeld().around(amount).standardUncertainty())
                .isCloseTo(handHeld().expanded(amount), within(ROUNDING));
    }

    /** 2 · 0.1/√12. */
    @Test
    void hasAFloorByTheDisplay() {
        assertThat(handHeld().expanded(0)).isCloseTo(0.0577350269, within(1e-10));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, -0.1, Double.POSITIVE_INFINITY})
    void refusesWhatIsNoUncertainty(double wrong) {
        assertThatThrownBy(() -> new Standard(wrong)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Rectangular(wrong)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Expanded(wrong, 2)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Expanded(0.1, wrong)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Scatter(wrong, 3)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new UncertaintyBudget(List.of(), wrong)).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @ValueSource(ints = {-1, 0, 1})
    void asksForTwoReadingsAtLeast(int count) {
        assertThatThrownBy(() -> new Scatter(0.1, count)).isInstanceOf(IllegalArgumentException.class);
    }
}
