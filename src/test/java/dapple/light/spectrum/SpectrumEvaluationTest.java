package dapple.light.spectrum;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import dapple.light.spectrum.KeeperLimit.Binding;
import dapple.light.spectrum.Spectrum.Sample;
import dapple.site.ReferenceSpectra;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class SpectrumEvaluationTest {
    private static final SpectrumTables TABLES = ReferenceSpectra.tables();
    private static final SpectrumEvaluation EVALUATION = new SpectrumEvaluation(TABLES);
    private static final SpectrumSummary SUN = EVALUATION.of(TABLES.sun().spectrum());

    /** Only the last bits of products and sums may differ. */
    private static final double ROUNDING = 1e-12;

    @Test
    void bindsTheEyesFirstInSunlight() {
        assertThat(SUN.keeperLimit().binding()).contains(Binding.UVA_EYE);
        assertThat(SUN.keeperLimit().minutes()).isEqualTo(SUN.keeperLimit().uvaEyeMinutes());
    }

    @Test
    void comparesTheSunWithItselfAsOne() {
        assertThat(SUN.sun().name()).contains("G173");
        for (SpectralBand band : List.of(
                SpectralBand.UVB, SpectralBand.UVA, SpectralBand.VISIBLE, SpectralBand.IR_A, SpectralBand.IR_B)) {
            assertThat(SUN.band(band).overSun().orElseThrow()).isCloseTo(1, within(ROUNDING));
        }
    }

    /** The sun as an instrument sees it that ends at 800 nm: it misses 42 % of the power, and still is the sun. */
    @ParameterizedTest
    @CsvSource({"280, 800", "300.25, 401", "500, 3999"})
    void comparesOverTheWavelengthsThatWereSampled(double from, double to) {
        SpectrumSummary part = EVALUATION.of(Spectra.between(TABLES.sun().spectrum(), from, to));
        assertThat(part.sun().range()).isEqualTo(new Range(from, to));
        assertThat(part.bands())
                .filteredOn(band -> band.overSun().isPresent())
                .isNotEmpty()
                .allSatisfy(band -> assertThat(band.overSun().getAsDouble()).isCloseTo(1, within(ROUNDING)));
    }

    @Test
    void comparesBandsThatWereNotSampledWithNothing() {
        SpectrumSummary part = EVALUATION.of(Spectra.between(TABLES.sun().spectrum(), 320, 700));
        assertThat(part.band(SpectralBand.UVB).overSun()).isEmpty();
        assertThat(part.band(SpectralBand.IR_A).overSun()).isEmpty();
    }

    @Test
    void comparesLinesWithTheWholeSun() {
        assertThat(EVALUATION.of(Spectra.line(365, 1)).sun().range()).isEqualTo(Range.ALL);
    }

    @Test
    void comparesWithTheSunOnlyWhereItHasPower() {
        assertThat(SUN.band(SpectralBand.UVC).overSun()).isEmpty();
        assertThat(SUN.band(SpectralBand.BELOW_290).overSun()).isEmpty();
    }

    @Test
    void saysHowManyTimesMoreOfABandThereIsThanInTheSun() {
        SpectrumSummary tenthOfUvb =
                EVALUATION.of(new Spectrum(List.of(), List.of(new Spectrum.Line(300, 1), new Spectrum.Line(600, 9))));
        assertThat(tenthOfUvb.band(SpectralBand.UVB).overSun().orElseThrow())
                .isCloseTo(0.1 / SUN.band(SpectralBand.UVB).share(), withinPercentage(1e-9));
    }

    /** The peak of V(λ): 683 lm/W [bipm2019]. */
    @Test
    void gives683LumensForAWattAtThePeakOfVision() {
        assertThat(EVALUATION.of(Spectra.line(555, 2)).illuminanceLux()).isCloseTo(1366, within(1e-9));
    }

    /** A germicidal line of 1 W/m²: 0.5 actinic (IEC 62471), so that 30 J/m² take a minute; erythema weight 1. */
    @Test
    void judgesAGermicidalLine() {
        SpectrumSummary line = EVALUATION.of(Spectra.line(254, 1));
        assertThat(line.actinicWattsPerSquareMetre()).isCloseTo(0.5, within(ROUNDING));
        assertThat(line.keeperLimit().minutes().orElseThrow()).isCloseTo(1, within(ROUNDING));
        assertThat(line.keeperLimit().binding()).contains(Binding.ACTINIC);
        assertThat(line.keeperLimit().uvaEyeMinutes()).isEmpty();
        assertThat(line.uvIndex().index()).isCloseTo(40, within(ROUNDING));
        assertThat(line.band(SpectralBand.UVC).share()).isEqualTo(1);
        assertThat(line.band(SpectralBand.BELOW_290).wattsPerSquareMetre()).isEqualTo(1);
    }

    @ParameterizedTest
    @CsvSource({
        "100, UVC",
        "279.999, UVC",
        "280, UVB",
        "314.999, UVB",
        "315, UVA",
        "379.999, UVA",
        "400.001, VISIBLE",
        "779.999, VISIBLE",
        "780, IR_A",
        "1400, IR_B",
        "3000, IR_B"
    })
    void countsALineOnABorderOnce(double nanometres, SpectralBand expected) {
        SpectrumSummary line = EVALUATION.of(Spectra.line(nanometres, 1));
        assertThat(line.bands())
                .filteredOn(band -> band.band() != SpectralBand.BELOW_290 && band.wattsPerSquareMetre() > 0)
                .extracting(BandShare::band)
                .containsExactly(expected);
    }

    @Test
    void countsALineFrom380To400NanometresAsUltravioletAndAsVisible() {
        SpectrumSummary line = EVALUATION.of(Spectra.line(400, 1));
        assertThat(line.band(SpectralBand.UVA).share()).isEqualTo(1);
        assertThat(line.band(SpectralBand.VISIBLE).share()).isEqualTo(1);
    }

    @Test
    void findsNothingInNothing() {
        SpectrumSummary nothing = EVALUATION.of(Spectra.empty());
        assertThat(amounts(nothing)).containsOnly(0.0);
        assertThat(nothing.keeperLimit().minutes()).isEmpty();
        assertThat(nothing.keeperLimit().binding()).isEmpty();
        assertThat(nothing.bands()).allMatch(band -> band.overSun().isEmpty());
    }

    @ParameterizedTest
    @MethodSource("dapple.light.spectrum.Spectra#seeded()")
    void isLinearInTheSpectrum(Spectrum spectrum) {
        List<Double> once = amounts(EVALUATION.of(spectrum));
        List<Double> thrice = amounts(EVALUATION.of(Spectra.scaled(spectrum, 3)));
        for (int index = 0; index < once.size(); index++) {
            assertThat(thrice.get(index)).isCloseTo(3 * once.get(index), within(ROUNDING * (1 + once.get(index))));
        }
    }

    @ParameterizedTest
    @MethodSource("dapple.light.spectrum.Spectra#seeded()")
    void givesOnlyNumbersThatCanBe(Spectrum spectrum) {
        SpectrumSummary summary = EVALUATION.of(spectrum);
        assertThat(amounts(summary)).allMatch(amount -> amount >= 0 && amount < Double.POSITIVE_INFINITY);
        assertThat(summary.bands()).allMatch(band -> band.share() >= 0 && band.share() <= 1);
    }

    @Test
    void staysFiniteAtTheLargestAmounts() {
        List<Sample> samples = new ArrayList<>();
        for (double nanometres = 1; nanometres <= 1e6; nanometres *= 1.5) {
            samples.add(new Sample(nanometres, 1e12));
        }
        assertThat(amounts(EVALUATION.of(new Spectrum(samples, List.of())))).allMatch(Double::isFinite);
    }

    @Test
    void findsAllOfABlackBody() {
        assertThat(EVALUATION.of(Spectra.blackBody(2856)).totalWattsPerSquareMetre())
                .isCloseTo(1, within(5e-5));
    }

    private static List<Double> amounts(SpectrumSummary summary) {
        List<Double> amounts = new ArrayList<>(List.of(
                summary.uvIndex().index(),
                summary.erythemal().wattsPerSquareMetre(),
                summary.vitaminD3WattsPerSquareMetre(),
                summary.actinicWattsPerSquareMetre(),
                summary.illuminanceLux(),
                summary.totalWattsPerSquareMetre(),
                summary.sedPerHour()));
        summary.bands().forEach(band -> amounts.add(band.wattsPerSquareMetre()));
        return amounts;
    }
}
