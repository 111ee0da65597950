package dapple.light.filament;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import dapple.light.spectrum.SpectralBand;
import dapple.light.spectrum.Weight;
import dapple.site.ReferenceSpectra;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FilamentTest {
    private static final Weight PHOTOPIC = ReferenceSpectra.tables().photopic();

    /** Half a unit of the fourth digit printed, in percent. */
    private static final double FOUR_DIGITS_PERCENT = 0.04;

    /** V(λ) each 5 nm is integrated by straight lines here, by another rule there, in percent. */
    private static final double EFFICACY_PERCENT = 0.1;

    @ParameterizedTest
    @CsvFileSource(resources = "/dapple/light/spectrum/black-body-published.csv", useHeadersInDisplayName = true)
    void isTheBlackBodyOfOtherPrograms(
            double kelvin, double uvaShare, double irAShare, double irBShare, double lumensPerWatt) {
        Filament filament = new Filament(kelvin);
        assertThat(filament.share(SpectralBand.UVA)).isCloseTo(uvaShare, withPercentage(FOUR_DIGITS_PERCENT));
        assertThat(filament.share(SpectralBand.IR_A)).isCloseTo(irAShare, withPercentage(FOUR_DIGITS_PERCENT));
        assertThat(filament.share(SpectralBand.IR_B)).isCloseTo(irBShare, withPercentage(FOUR_DIGITS_PERCENT));
        assertThat(filament.lumensPerWatt(PHOTOPIC)).isCloseTo(lumensPerWatt, withPercentage(EFFICACY_PERCENT));
    }

    /** CIE's source A, 2856 K: 16.4 lm/W, and 37 % of the power from 780 to 1400 nm; handbook values, from memory. */
    @Test
    void isTheHandbooksSourceA() {
        Filament sourceA = new Filament(2856);
        assertThat(sourceA.lumensPerWatt(PHOTOPIC)).isCloseTo(16.4, within(0.05));
        assertThat(sourceA.share(SpectralBand.IR_A)).isCloseTo(0.37, within(0.005));
    }

    /** Half of a black body's power is shorter than 4107 µm·K: handbooks of heat transfer, from memory. */
    @Test
    void hasHalfItsPowerBelowTheHandbooksWavelength() {
        Filament filament = new Filament(4107.0 / 3);
        double upTo3000 = Arrays.stream(new SpectralBand[] {
                    SpectralBand.UVC,
                    SpectralBand.UVB,
                    SpectralBand.UVA,
                    SpectralBand.VISIBLE,
                    SpectralBand.IR_A,
                    SpectralBand.IR_B
                })
                .mapToDouble(filament::share)
                .sum();
        assertThat(upTo3000).isCloseTo(0.5, within(0.0005));
    }

    @ParameterizedTest
    @ValueSource(doubles = {500, 1000, 1800, 2900, 5800, 10_000})
    void hasSharesThatArePartsOfOne(double kelvin) {
        Filament filament = new Filament(kelvin);
        assertThat(Arrays.stream(SpectralBand.values()).mapToDouble(filament::share))
                .allMatch(share -> share >= 0 && share < 1);
    }

    @Test
    void hasMoreLightAndLessIrBWhenHotter() {
        assertThat(new Filament(3000).share(SpectralBand.VISIBLE))
                .isGreaterThan(new Filament(2700).share(SpectralBand.VISIBLE));
        assertThat(new Filament(3000).share(SpectralBand.IR_B)).isLessThan(new Filament(2700).share(SpectralBand.IR_B));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, 0, -1, 499, 10_001, Double.POSITIVE_INFINITY})
    void isNotOfNoTemperature(double kelvin) {
        assertThatThrownBy(() -> new Filament(kelvin)).isInstanceOf(IllegalArgumentException.class);
    }

    /** 70 % of the voltage, 2900 K: 30 % of the light, 57 % of the power, 2500 K; worked by hand from the exponents. */
    @Test
    void dimmedToSevenTenthsGivesThreeTenthsOfTheLight() {
        Dimming dimming = new Dimming(0.7);
        assertThat(dimming.light()).isCloseTo(0.30, within(0.005));
        assertThat(dimming.power()).isCloseTo(0.565, within(0.0005));
        assertThat(dimming.of(new Filament(2900)).kelvin()).isCloseTo(2500, within(5.0));
    }

    @Test
    void atItsOwnVoltageIsItself() {
        assertThat(new Dimming(1)).extracting(Dimming::light, Dimming::power).containsExactly(1.0, 1.0);
        assertThat(new Dimming(1).of(new Filament(2900)).kelvin()).isEqualTo(2900);
    }

    /**
     * Two roads to the same: the light falls as x^3.4, and power times the efficacy of Planck's law at the lower temperature.
     * They agree as far as the exponents are good.
     */
    @ParameterizedTest
    @CsvSource({"0.95, 3", "0.9, 5", "0.8, 10"})
    void losesAboutTheLightThatPlancksLawSays(double ratio, double percent) {
        Filament rated = new Filament(2900);
        Dimming dimming = new Dimming(ratio);
        double byPlanck = dimming.power() * dimming.of(rated).lumensPerWatt(PHOTOPIC) / rated.lumensPerWatt(PHOTOPIC);
        assertThat(dimming.light()).isCloseTo(byPlanck, withPercentage(percent));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, 0, 0.39, 1.11})
    void isNotDimmedBeyondWhatTheExponentsHoldFor(double ratio) {
        assertThatThrownBy(() -> new Dimming(ratio)).isInstanceOf(IllegalArgumentException.class);
    }
}
