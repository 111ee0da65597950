package dapple.light.judging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dapple.light.quantity.Quantity;
import java.util.Random;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class MeterUncertaintyTest {
    /** The numbers beside this test are worked out to four decimals. */
    private static final double HALF_OF_LAST_DIGIT = 5e-5;

    private static final MeterUncertainty HAND_HELD = MeterUncertainty.ofResolution(0.1);

    /** Rectangular distribution of half-width a: u = a/√3 (JCGM 100:2008, 4.3.7); U = 2 u, combined in quadrature. */
    @ParameterizedTest
    @CsvFileSource(resources = "meter-uncertainty-worked.csv", useHeadersInDisplayName = true)
    void combinesShareAndResolution(double uvi, double resolution, double share, double expanded) {
        assertThat(new MeterUncertainty(share, resolution).expanded(uvi))
                .isCloseTo(expanded, within(HALF_OF_LAST_DIGIT));
    }

    @Test
    void neverReachesBelowZero() {
        assertThat(HAND_HELD.around(0).interval().low()).isZero();
    }

    @Test
    void keepsAFloorAtZero() {
        assertThat(HAND_HELD.around(0).interval().high()).isPositive();
    }

    static DoubleStream amounts() {
        return new Random(1).doubles(200, 0, 20);
    }

    @ParameterizedTest
    @MethodSource("amounts")
    void growsWithTheAmount(double amount) {
        assertThat(HAND_HELD.expanded(amount + 0.1)).isGreaterThan(HAND_HELD.expanded(amount));
    }

    static Stream<Arguments> bands() {
        Random random = new Random(2);
        return Stream.generate(() -> {
                    double low = random.nextInt(4) == 0 ? 0 : random.nextDouble() * 5;
                    return Arguments.of(low, low + random.nextDouble() * (1 + low), 0.05 + random.nextDouble() * 0.3);
                })
                .limit(300);
    }

    /** By search over a fine grid of amounts, independent of the closed form. */
    @ParameterizedTest
    @MethodSource("bands")
    void isCoarserThanABandThatNoAmountClears(double low, double high, double share) {
        MeterUncertainty meter = new MeterUncertainty(share, 0.1);
        Band band = new Band(low, high);
        boolean someClears = DoubleStream.iterate(0, amount -> amount <= high, amount -> amount + 1e-4)
                .anyMatch(amount -> (low == 0 || amount - meter.expanded(amount) >= low)
                        && amount + meter.expanded(amount) <= high);
        assertThat(meter.isCoarserThan(band)).isEqualTo(!someClears);
    }

    /** Worked (JCGM 100:2008, 4.3.7): √(1² + (2·0.1/√12)²) = 1.0017 °C, at every temperature alike. */
    @ParameterizedTest
    @ValueSource(doubles = {-40, 0, 38.5, 120})
    void isAsWideAtEveryTemperature(double celsius) {
        assertThat(MeterUncertainty.of(Quantity.SURFACE_TEMPERATURE, 0.1).expanded(celsius))
                .isCloseTo(1.0017, within(HALF_OF_LAST_DIGIT));
    }

    @Test
    void reachesBelowZeroWithATemperatureAlone() {
        assertThat(MeterUncertainty.of(Quantity.AIR_TEMPERATURE, 0.1)
                        .around(Quantity.AIR_TEMPERATURE, 0.2)
                        .interval()
                        .low())
                .isNegative();
    }

    /** By search, as above, with a fixed part besides the share. */
    @ParameterizedTest
    @MethodSource("bands")
    void countsItsFixedPartWhereABandIsFine(double low, double high, double share) {
        MeterUncertainty meter = new MeterUncertainty(share, 0.2, 0.1);
        Band band = new Band(low, high);
        boolean someClears = DoubleStream.iterate(0, amount -> amount <= high, amount -> amount + 1e-4)
                .anyMatch(amount -> (low == 0 || amount - meter.expanded(amount) >= low)
                        && amount + meter.expanded(amount) <= high);
        assertThat(meter.isCoarserThan(band)).isEqualTo(!someClears);
    }

    @ParameterizedTest
    @EnumSource
    void knowsWhatToAssumeOfEveryQuantity(Quantity quantity) {
        assertThat(MeterUncertainty.of(quantity, 0.1).expanded(10)).isPositive();
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY})
    void refusesAmountsThatNoMeterShows(double amount) {
        assertThatThrownBy(() -> HAND_HELD.around(amount)).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @CsvSource({"1, 0.1", "-0.1, 0.1", "NaN, 0.1", "0.2, 0", "0.2, -1", "0.2, NaN", "0.2, Infinity"})
    void refusesSharesAndResolutionsThatNoMeterHas(double share, double resolution) {
        assertThatThrownBy(() -> new MeterUncertainty(share, resolution)).isInstanceOf(IllegalArgumentException.class);
    }
}
