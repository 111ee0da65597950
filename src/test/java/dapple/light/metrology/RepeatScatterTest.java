package dapple.light.metrology;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dapple.light.judging.MeasuredAmount;
import dapple.light.judging.MeterUncertainty;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RepeatScatterTest {
    /** 20 % and a step of 0.1: u = 0.1 y and 0.1/√12. */
    private static final MeterUncertainty METER = new MeterUncertainty(0.2, 0.1);

    private static final double ROUNDING = 1e-12;

    /** The factors of Student's distribution are printed to two decimals. */
    private static final double PRINTED = 0.005;

    /**
     * By hand: s = 0.2, u = 0.2/√3 = 0.11547; u_c² = 0.3² + 0.11547² + 0.1²/12 = 0.104167; ν = 0.104167²/(0.11547⁴/2) = 122;
     * k = 2 (Student 1.98, at least 2): U = 0.6455.
     */
    @Test
    void addsTheScatterToTheMeters() {
        assertThat(expanded(METER, 0, 2.8, 3.0, 3.2)).isCloseTo(0.6455, within(1e-4));
    }

    /**
     * By hand: s = 1, u = 0.57735; u_c² = 0.03² + 0.3333 + 0.1²/12 = 0.335067, ν = 0.335067²/(0.3333²/2) = 2.02; k = 4.30 for 2
     * [jcgm100, table G.2]: U = 4.303 · 0.57885 = 2.49.
     */
    @Test
    void widensWhereFewRepeatsAreAllThatIsKnown() {
        assertThat(expanded(new MeterUncertainty(0.02, 0.1), 0, 2, 3, 4)).isCloseTo(2.49, within(PRINTED));
    }

    @Test
    void isTheMetersWhereTheRepeatsAgree() {
        assertThat(expanded(METER, 0, 3, 3, 3)).isCloseTo(METER.expanded(3), within(ROUNDING));
    }

    /** What is stated, 5 % of 3, is more than 0.1/√3. */
    @Test
    void isTheMetersWhereMoreIsStatedForRepeats() {
        assertThat(expanded(METER, 0.05, 2.9, 3.0, 3.1)).isCloseTo(METER.expanded(3), within(ROUNDING));
    }

    /** By hand: u² = 0.3² − 0.03² + 0.11547² + 0.1²/12 = 0.103267; U = 2 · 0.32135. */
    @Test
    void takesThePlaceOfWhatIsStatedForRepeats() {
        assertThat(expanded(METER, 0.01, 2.8, 3.0, 3.2)).isCloseTo(0.6427, within(1e-4));
    }

    @Test
    void isCutOffAtZero() {
        assertThat(around(METER, 0, 0, 0, 0.4).interval().low()).isZero();
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.5, 1, 5, 10, 100})
    void isNeverNarrowerThanTheMeters(double amount) {
        assertThat(expanded(METER, 0.001, amount * 0.999, amount, amount * 1.001))
                .isGreaterThanOrEqualTo(METER.expanded(amount) - ROUNDING);
    }

    @Test
    void growsWithTheScatter() {
        assertThat(expanded(METER, 0, 2.5, 3.0, 3.5)).isGreaterThan(expanded(METER, 0, 2.9, 3.0, 3.1));
    }

    @Test
    void ofOneIsUnknown() {
        assertThatThrownBy(() -> new RepeatScatter(new Repeats(List.of(3.0)), 0))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, -0.1, Double.POSITIVE_INFINITY})
    void refusesWhatIsNoShare(double wrong) {
        assertThatThrownBy(() -> new RepeatScatter(new Repeats(List.of(3.0, 3.0)), wrong))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static double expanded(MeterUncertainty meter, double stated, double... amounts) {
        MeasuredAmount measured = around(meter, stated, amounts);
        return measured.interval().high() - measured.amount();
    }

    private static MeasuredAmount around(MeterUncertainty meter, double stated, double... amounts) {
        List<Double> all = Arrays.stream(amounts).boxed().toList();
        return new RepeatScatter(new Repeats(all), stated).around(meter);
    }
}
