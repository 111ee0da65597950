package dapple.light.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dapple.light.calibration.TransmittanceResult.Measured;
import dapple.light.calibration.TransmittanceResult.Unknown;
import dapple.light.uncertainty.StandardUncertainty;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CoverCalibrationTest {
    /** What the end of the search leaves. */
    private static final double EXACT = 1e-6;

    /** As for lamps: 92 to 98 % are near three of the 1.1 % by which the share of 400 series scatters. */
    private static final int SERIES = 400;

    /**
     * Worked by hand from JCGM 100:2008, eq. 12: (u/T)² = (u₁/y₁)² + (u₂/y₂)², with 3 and 4 % or alike. Huber's loss
     * makes u wider by √1.0526.
     */
    @ParameterizedTest
    @CsvSource({
        "3.0, 6.0, 0.03, 0, 0.5, 0.0212132",
        "3.0, 6.0, 0, 0.12, 0.5, 0.0223607",
        "2.4, 8.0, 0.02, 0.08, 0.3, 0.0134536"
    })
    void aRatioIsAsSureAsItsReadings(
            double through, double open, double relative, double absolute, double share, double uncertainty) {
        Measured found =
                measured(List.of(new CoverPair(through, open, new StandardUncertainty(relative, absolute))), 1);
        double digits = 1e-6;
        assertThat(found.share()).isCloseTo(share, within(EXACT));
        assertThat(found.standardUncertainty()).isCloseTo(uncertainty * Math.sqrt(1.0526), within(digits));
        assertThat(found.quality().reducedChiSquare()).isEmpty();
    }

    @Test
    void theCalibrationOfTheMeterCancels() {
        Measured asRead = measured(pairs(new Random(1), 0.6, 1), 1);
        List<CoverPair> byAnother = pairs(new Random(1), 0.6, 1).stream()
                .map(pair -> new CoverPair(1.3 * pair.through(), 1.3 * pair.open(), StandardUncertainty.relative(0.04)))
                .toList();
        assertThat(measured(byAnother, 1).share()).isCloseTo(asRead.share(), within(EXACT));
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 3})
    void intervalsCoverWhatMadeTheReadings(int layers) {
        int covered = 0;
        Random random = new Random(layers);
        for (int series = 0; series < SERIES; series++) {
            double share = 0.3 + 0.6 * random.nextDouble();
            Measured found = measured(pairs(random, Math.pow(share, layers), 1), layers);
            covered += found.interval().contains(share) ? 1 : 0;
        }
        assertThat((double) covered / SERIES).isBetween(0.92, 0.98);
    }

    @Test
    void namesThePairThatDoesNotFit() {
        List<CoverPair> pairs = new ArrayList<>(pairs(new Random(3), 0.6, 1));
        pairs.set(2, new CoverPair(1.8, 2, StandardUncertainty.relative(0.04)));
        Measured found = measured(pairs, 1);
        assertThat(found.fits(2)).isFalse();
        assertThat(found.fits(1)).isTrue();
        assertThat(found.interval().contains(0.6)).isTrue();
    }

    @Test
    void anOpaqueSheetPassesNothingAndNeverLess() {
        StandardUncertainty display = StandardUncertainty.absolute(0.03);
        Measured found = measured(List.of(new CoverPair(0, 5, display), new CoverPair(0, 7, display)), 1);
        assertThat(found.share()).isCloseTo(0, within(EXACT));
        assertThat(found.interval().low()).isZero();
        assertThat(found.interval().high()).isBetween(0.005, 0.02);
    }

    @Test
    void nothingPassesMoreThanAll() {
        Measured found = measured(List.of(new CoverPair(5.1, 5, StandardUncertainty.relative(0.03))), 1);
        assertThat(found.share()).isCloseTo(1, within(EXACT));
        assertThat(found.interval().high()).isEqualTo(1);
    }

    @Test
    void saysWhenThePairsDoNotTell() {
        CoverPair dim = new CoverPair(0.1, 0.1, StandardUncertainty.absolute(0.06));
        assertThat(CoverCalibration.of(List.of(dim), 1)).isInstanceOf(Unknown.class);
    }

    @Test
    void refusesWhatIsNoPair() {
        StandardUncertainty share = StandardUncertainty.relative(0.1);
        assertThatThrownBy(() -> new CoverPair(0, 1, share)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new CoverPair(1, 0, share)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new CoverPair(Double.NaN, 1, share)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new CoverPair(1, Double.POSITIVE_INFINITY, share))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> CoverCalibration.of(List.of(), 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> CoverCalibration.of(pairs(new Random(1), 0.5, 1), 0))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** Five pairs with 4 % of noise each, near 2. */
    private static List<CoverPair> pairs(Random random, double ratio, double noise) {
        List<CoverPair> pairs = new ArrayList<>();
        for (int pair = 0; pair < 5; pair++) {
            double open = 1.5 + random.nextDouble();
            pairs.add(new CoverPair(
                    open * ratio * (1 + 0.04 * noise * random.nextGaussian()),
                    open * (1 + 0.04 * noise * random.nextGaussian()),
                    StandardUncertainty.relative(0.04)));
        }
        return pairs;
    }

    private static Measured measured(List<CoverPair> pairs, int layers) {
        TransmittanceResult result = CoverCalibration.of(pairs, layers);
        assertThat(result).isInstanceOf(Measured.class);
        return (Measured) result;
    }
}
