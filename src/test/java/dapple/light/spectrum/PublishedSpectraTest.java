package dapple.light.spectrum;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dapple.site.ReferenceSpectra;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Whole spectra against what others publish of them. */
class PublishedSpectraTest {
    private static final SpectrumTables TABLES = ReferenceSpectra.tables();
    private static final SpectrumEvaluation EVALUATION = new SpectrumEvaluation(TABLES);
    private static final SpectrumSummary GLOBAL = EVALUATION.of(TABLES.sun().spectrum());
    private static final SpectrumSummary DIRECT = EVALUATION.of(ReferenceSpectra.sun("direct_circumsolar_W_m2_nm"));

    /** Only the last bits may differ. */
    private static final double ROUNDING = 1e-12;

    /** Samples each 0.2 % of the wavelength: at 2000 K the ultraviolet is so steep that straight lines miss 0.01 %. */
    private static final double SAMPLED = 3e-4;

    /** Half a unit of the fourth digit printed. */
    private static final double FOUR_DIGITS = 3e-4;

    /** Times printed with four digits after the point. */
    private static final double FOUR_DECIMALS = 1e-6;

    @ParameterizedTest
    @CsvFileSource(resources = "sun-published.csv", useHeadersInDisplayName = true)
    void areTheStandardSun(String spectrum, String quantity, double amount, double tolerance) {
        assertThat(of(spectrum.equals("direct") ? DIRECT : GLOBAL, quantity)).isCloseTo(amount, within(tolerance));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "sun-kept.csv", useHeadersInDisplayName = true)
    void areTheStandardSunAsBefore(String quantity, double amount, String source) {
        assertThat(of(GLOBAL, quantity)).as(source).isCloseTo(amount, within(ROUNDING * amount));
    }

    private static double of(SpectrumSummary sun, String quantity) {
        return switch (quantity) {
            case "uv_index" -> sun.uvIndex().index();
            case "erythemal_watts_per_square_metre" -> sun.erythemal().wattsPerSquareMetre();
            case "actinic_watts_per_square_metre" -> sun.actinicWattsPerSquareMetre();
            case "illuminance_lux" -> sun.illuminanceLux();
            case "vitamin_d3_watts_per_square_metre" -> sun.vitaminD3WattsPerSquareMetre();
            case "uvb_percent" -> 100 * sun.band(SpectralBand.UVB).share();
            case "uva_percent" -> 100 * sun.band(SpectralBand.UVA).share();
            case "visible_percent" -> 100 * sun.band(SpectralBand.VISIBLE).share();
            case "ir_a_percent" -> 100 * sun.band(SpectralBand.IR_A).share();
            case "ir_b_percent" -> 100 * sun.band(SpectralBand.IR_B).share();
            case "uvb_watts_per_square_metre" -> sun.band(SpectralBand.UVB).wattsPerSquareMetre();
            case "uva_watts_per_square_metre" -> sun.band(SpectralBand.UVA).wattsPerSquareMetre();
            case "ir_a_watts_per_square_metre" -> sun.band(SpectralBand.IR_A).wattsPerSquareMetre();
            case "total_watts_per_square_metre" -> sun.totalWattsPerSquareMetre();
            case "sed_per_hour" -> sun.sedPerHour();
            case "uva_eye_seconds" -> 60 * sun.keeperLimit().uvaEyeMinutes().orElseThrow();
            default -> throw new IllegalArgumentException("unknown quantity " + quantity);
        };
    }

    @ParameterizedTest
    @CsvFileSource(resources = "black-body-published.csv", useHeadersInDisplayName = true)
    void areABlackBody(double kelvin, double uva, double irA, double irB, double lumensPerWatt) {
        SpectrumSummary body = EVALUATION.of(Spectra.blackBody(kelvin));
        assertThat(body.band(SpectralBand.UVA).share()).isCloseTo(uva, within((SAMPLED + FOUR_DIGITS) * uva));
        assertThat(body.band(SpectralBand.IR_A).share()).isCloseTo(irA, within(SAMPLED * irA));
        assertThat(body.band(SpectralBand.IR_B).share()).isCloseTo(irB, within(SAMPLED * irB));
        assertThat(body.illuminanceLux() / body.totalWattsPerSquareMetre())
                .isCloseTo(lumensPerWatt, within((SAMPLED + FOUR_DIGITS) * lumensPerWatt));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "actinic-limit-published.csv", useHeadersInDisplayName = true)
    void keepToTheTableOfTimes(double minutes, double effectiveWattsPerSquareMetre, double halfADigit) {
        double exact = KeeperLimit.ACTINIC_JOULES_PER_SQUARE_METRE / (60 * minutes);
        assertThat(KeeperLimit.of(exact, 0).actinicMinutes().orElseThrow())
                .isCloseTo(minutes, within(ROUNDING * minutes));
        assertThat(exact).isCloseTo(effectiveWattsPerSquareMetre, within(halfADigit));
    }

    /** At 280 nm the erythema weight is 1. */
    @ParameterizedTest
    @CsvFileSource(resources = "dose-published.csv", useHeadersInDisplayName = true)
    void giveStandardDoses(double uvIndex, double minutes, double doses) {
        SpectrumSummary line = EVALUATION.of(Spectra.line(280, uvIndex * 0.025));
        assertThat(line.uvIndex().index()).isCloseTo(uvIndex, within(ROUNDING * uvIndex));
        assertThat(line.sedPerHour() * minutes / 60).isCloseTo(doses, within(FOUR_DECIMALS * doses));
    }
}
