package dapple.light.metrology;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Readings without noise, whose ratios are known. */
class PairedMetersTest {
    private static final double ROUNDING = 1e-9;
    private static final double UNCERTAINTY = 0.1;
    private static final Instant FIRST = Instant.parse("2026-01-05T09:00:00Z");
    private static final LampSet LAMPS = new LampSet("17/1", new DeclineOfClass(1e-4, 0.8, 4000));

    private static Compared reading(String meter, Instant at, double lnAmount) {
        return new Compared(meter, "17.1", LAMPS, at, lnAmount, UNCERTAINTY);
    }

    /** Every 73 days, a fifth of a year of 365 days, b reads 2 % more against a. */
    private static List<Compared> fifths(int occasions) {
        List<Compared> readings = new ArrayList<>();
        for (int occasion = 0; occasion < occasions; occasion++) {
            Instant at = FIRST.plus(Duration.ofDays(73L * occasion));
            readings.add(reading("a", at, 1 - 0.3 * occasion));
            readings.add(reading("b", at.plus(Duration.ofMinutes(5)), 1 - 0.3 * occasion + 0.02 * occasion));
        }
        return readings;
    }

    private static List<PairedMeters> paired(List<Compared> readings) {
        return PairedMeters.of(readings, DriftSettings.USUAL);
    }

    @Test
    void hasTheRatioWhateverTheLampDoes() {
        PairedMeters pair = paired(fifths(4)).get(0);
        assertThat(pair.occasions()).hasSize(4);
        assertThat(pair.newest().estimate()).isCloseTo(-0.06, within(ROUNDING));
    }

    /** −0.02 in 73 of 365.25 days. */
    @Test
    void hasTheDriftOfTheFirstAgainstTheSecond() {
        double perYear = paired(fifths(5)).get(0).drift().orElseThrow().estimate();
        assertThat(perYear).isCloseTo(-0.02 * 365.25 / 73, within(ROUNDING));
    }

    @Test
    void twoOccasionsGiveNoDrift() {
        assertThat(paired(fifths(2)).get(0).drift()).isEmpty();
    }

    @Test
    void readingsFarApartAreNoPair() {
        assertThat(paired(List.of(reading("a", FIRST, 1), reading("b", FIRST.plus(Duration.ofMinutes(61)), 1))))
                .isEmpty();
    }

    @Test
    void readingsUnderOtherLampsAreNoPair() {
        LampSet others = new LampSet("17/2", LAMPS.decline());
        assertThat(paired(List.of(reading("a", FIRST, 1), new Compared("b", "17.1", others, FIRST, 1, UNCERTAINTY))))
                .isEmpty();
    }

    @Test
    void repeatsByOneMeterAreNoPair() {
        assertThat(paired(List.of(reading("a", FIRST, 1), reading("a", FIRST, 1.1))))
                .isEmpty();
    }

    @Test
    void threeMetersGiveThreePairs() {
        assertThat(paired(List.of(reading("a", FIRST, 1), reading("b", FIRST, 1), reading("c", FIRST, 1))))
                .hasSize(3);
    }

    /** One pair: √(2 · (0.1² + 0.01² + 0.04²)), by the usual settings for reading, day and lamps. */
    @Test
    void isAsSureAsItsReadings() {
        DriftSettings settings = new DriftSettings(0.2, 0.04, 0.01, 0.5, 4.4, 0.03);
        PairedMeters pair = PairedMeters.of(fifths(1), settings).get(0);
        assertThat(pair.occasions().get(0).standardError()).isCloseTo(Math.sqrt(0.0234), within(ROUNDING));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, 0, -0.1})
    void refusesWhatIsNoReading(double wrong) {
        assertThatThrownBy(() -> new Compared("a", "17.1", LAMPS, FIRST, 1, wrong))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> DriftSettings.USUAL.withThreshold(wrong)).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, -0.1})
    void refusesWhatIsNoDecline(double wrong) {
        assertThatThrownBy(() -> new DeclineOfClass(wrong, 0.8, 4000)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new DeclineOfClass(1e-4, wrong, 4000)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new DeclineOfClass(1e-4, 0.8, wrong)).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.NEGATIVE_INFINITY})
    void refusesALogarithmOfNothing(double wrong) {
        assertThatThrownBy(() -> reading("a", FIRST, wrong)).isInstanceOf(IllegalArgumentException.class);
    }
}
