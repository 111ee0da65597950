package dapple.light.expectation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dapple.light.quantity.Interval;
import dapple.light.quantity.Quantity;
import java.util.List;
import java.util.Random;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ExpectedTest {
    private static final double EXACT = 1e-9;
    private static final double TENTHS = 0.1;

    /** Hand-worked: one reading of 3.0, σ = 0.10 · √(1 + π/2) = 0.16033; 3 · e^(±3σ) = 1.8545 and 4.8531, and a tenth. */
    @Test
    void followsFromOneReading() {
        Interval range = ofReadings(3.0).range();
        assertThat(range.low()).isCloseTo(1.7545, within(1e-4));
        assertThat(range.high()).isCloseTo(4.9531, within(1e-4));
    }

    @Test
    void takesTheMedianOfTheNewestFive() {
        assertThat(ofReadings(3.0, 3.0, 3.0, 3.0, 3.0, 90, 90, 90)).isEqualTo(ofReadings(3.0, 3.0, 3.0, 3.0, 3.0));
    }

    @Test
    void isLedAstrayByNoSingleSlip() {
        Interval range = ofReadings(3.0, 30, 3.1, 2.9).range();
        assertThat(range.contains(3.0)).isTrue();
        assertThat(range.contains(30)).isFalse();
    }

    @Test
    void isNarrowerAfterMoreReadings() {
        assertThat(width(ofReadings(3.0, 3.0, 3.0, 3.0, 3.0))).isLessThan(width(ofReadings(3.0)));
    }

    /** A half life of 1,000 h at 10 h a day: after 100 days half is left. */
    @Test
    void fallsWithTheHoursBurnt() {
        Expected fresh = Expected.from(
                Quantity.UV_INDEX, List.of(new PastReading(4, 0)), Ageing.of(Math.log(2) / 1000, 10), 1e-6);
        Expected old = Expected.from(
                Quantity.UV_INDEX, List.of(new PastReading(4, 100)), Ageing.of(Math.log(2) / 1000, 10), 1e-6);
        assertThat(centre(fresh)).isCloseTo(4, within(1e-4));
        assertThat(centre(old)).isCloseTo(2, within(1e-4));
        assertThat(old.range().high() / old.range().low())
                .isGreaterThan(fresh.range().high() / fresh.range().low());
    }

    @Test
    void expectsNoughtWhereNoughtWasRead() {
        Interval range = ofReadings(0, 0, 0).range();
        assertThat(range.low()).isZero();
        assertThat(range.high()).isBetween(0.1, 0.3);
    }

    @Test
    void allowsForTheUncertaintyOfAPrediction() {
        Expected found = Expected.from(Quantity.UV_INDEX, 3, new Interval(2, 4), TENTHS);
        assertThat(found.basis()).isEqualTo(Expected.Basis.PREDICTION);
        assertThat(found.range().low()).isLessThan(2);
        assertThat(found.range().high()).isGreaterThan(4);
    }

    @Test
    void doesNotFailWhereDarknessIsPredicted() {
        Interval range =
                Expected.from(Quantity.UV_INDEX, 0, new Interval(0, 0), TENTHS).range();
        assertThat(range.contains(0)).isTrue();
        assertThat(range.contains(1)).isFalse();
    }

    @Test
    void comparesTemperaturesByDifferences() {
        List<PastReading> past = List.of(new PastReading(-2, 7), new PastReading(-2, 14));
        Interval range = Expected.from(Quantity.AIR_TEMPERATURE, past, Ageing.NONE, TENTHS)
                .range();
        assertThat(range.low()).isLessThan(-10);
        assertThat((range.low() + range.high()) / 2).isCloseTo(-2, within(EXACT));
    }

    @Test
    void isShownAsTheMeterShowsIt() {
        Expected found = ofReadings(3.0);
        assertThat(found.shownBy(1.25).high()).isCloseTo(found.range().high() / 1.25, within(EXACT));
    }

    @Test
    void needsAReading() {
        assertThatIllegalArgumentException().isThrownBy(ExpectedTest::ofReadings);
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, -1})
    void refusesWhatIsNoAge(double daysAgo) {
        assertThatIllegalArgumentException().isThrownBy(() -> new PastReading(1, daysAgo));
    }

    /** Of 20,000 careful readings with the scatter that is taken, at most 1 in 100 is called unlikely; of slips by ten, all. */
    @Test
    void seldomDoubtsACarefulReading() {
        Random random = new Random(20_261_126);
        long doubted = IntStream.range(0, 20_000)
                .filter(one -> {
                    double[] read = random.doubles(5, 0, 1)
                            .map(unused -> 3 * Math.exp(Expected.HAND_HELD_SCATTER * random.nextGaussian()))
                            .toArray();
                    double next = 3 * Math.exp(Expected.HAND_HELD_SCATTER * random.nextGaussian());
                    return !ofReadings(read).range().contains(next);
                })
                .count();
        assertThat(doubted).isLessThan(200);
    }

    @Test
    void takesLampsOverOnePointAsOneAnother() {
        assertThat(Ageing.mean(List.of(new Ageing(0.002), new Ageing(0.004)))).isEqualTo(new Ageing(0.003));
        assertThat(Ageing.mean(List.of())).isEqualTo(Ageing.NONE);
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, -1, 25})
    void refusesWhatIsNoTimeOfBurning(double hoursADay) {
        assertThatIllegalArgumentException().isThrownBy(() -> Ageing.of(1e-4, hoursADay));
    }

    private static Expected ofReadings(double... newestFirst) {
        return Expected.from(
                Quantity.UV_INDEX,
                DoubleStream.of(newestFirst)
                        .mapToObj(amount -> new PastReading(amount, 7))
                        .toList(),
                Ageing.NONE,
                TENTHS);
    }

    private static double centre(Expected expected) {
        return Math.sqrt(expected.range().low() * expected.range().high());
    }

    private static double width(Expected expected) {
        return expected.range().high() - expected.range().low();
    }
}
