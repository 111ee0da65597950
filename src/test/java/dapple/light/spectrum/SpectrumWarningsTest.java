package dapple.light.spectrum;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.light.spectrum.Spectrum.Line;
import dapple.light.spectrum.Spectrum.Sample;
import dapple.site.ReferenceSpectra;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpectrumWarningsTest {
    private static final SpectrumTables TABLES = ReferenceSpectra.tables();
    private static final SpectrumEvaluation EVALUATION = new SpectrumEvaluation(TABLES);
    private static final Spectrum SUN = TABLES.sun().spectrum();
    private static final String COARSE = "The samples are too coarse near 300 nm";

    @ParameterizedTest
    @CsvSource({"289.999, true", "290, false"})
    void warnOfPowerBelow290Nanometres(double nanometres, boolean warns) {
        Spectrum spectrum = new Spectrum(List.of(), List.of(new Line(nanometres, 0.02), new Line(500, 0.98)));
        assertThat(of(spectrum).stream()
                        .anyMatch(
                                warning -> warning.startsWith("Power below 290 nm: 0.0200 W/m², 2.00 % of the whole.")))
                .isEqualTo(warns);
    }

    @Test
    void doNotTakeTheSunForAFaultyLampOrABadSpectrum() {
        assertThat(of(SUN)).hasSize(2);
    }

    @Test
    void sayThatVitaminD3IsUnverifiedAndThatBandsOverlap() {
        assertThat(of(SUN))
                .anyMatch(warning -> warning.contains("unverified transcription"))
                .anyMatch(warning -> warning.contains("do not add up"));
    }

    @Test
    void sayNoMoreOfNothing() {
        assertThat(of(Spectra.empty())).hasSize(2);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "280; 400; visible, IR-A, IR-B",
                "250; 780; IR-A, IR-B",
                "250; 1400; IR-B",
                "290.5; 3000; UVB",
                "315; 3000; UVB",
                "316; 3000; UVB, UVA",
                "381; 3000; UVB, UVA, visible"
            })
    void nameTheBandsThatAreNotCovered(double from, double to, String missed) {
        Spectrum flat = new Spectrum(List.of(new Sample(from, 0), new Sample(to, 0)), List.of());
        assertThat(of(flat)).anyMatch(warning -> warning.contains("or not wholly: " + missed + "."));
    }

    @Test
    void sayFromWhereToWhereTheSamplesReach() {
        Spectrum flat = new Spectrum(List.of(new Sample(280, 0), new Sample(780.25, 0)), List.of());
        assertThat(of(flat)).anyMatch(warning -> warning.startsWith("The samples reach from 280 to 780.25 nm and"));
    }

    @Test
    void sayThatOneSampleAloneIsNothing() {
        assertThat(of(new Spectrum(List.of(new Sample(280, 1)), List.of())))
                .anyMatch(warning -> warning.startsWith("One sample alone"))
                .noneMatch(warning -> warning.contains("reach"));
    }

    @ParameterizedTest
    @CsvSource({"1, false", "2, false", "3, true", "10, true"})
    void findStepsOverANanometreTooCoarseNear300(int halfNanometres, boolean warns) {
        assertThat(of(Spectra.each(SUN, halfNanometres)).stream().anyMatch(warning -> warning.startsWith(COARSE)))
                .isEqualTo(warns);
    }

    @Test
    void sayHowCoarseTheSamplesAre() {
        assertThat(of(Spectra.each(SUN, 10))).anyMatch(warning -> warning.startsWith(COARSE + ", up to 5 nm apart"));
    }

    /** A white lamp that has no ultraviolet needs no fine steps there; nor does any where the weights are gentle. */
    @Test
    void findNoStepTooCoarseWhereThereIsNothingToWeigh() {
        List<Sample> white = IntStream.rangeClosed(50, 80)
                .mapToObj(tens -> new Sample(5 * tens, 5 * tens > 380 ? 1 : 0))
                .toList();
        assertThat(of(new Spectrum(white, List.of()))).noneMatch(warning -> warning.startsWith(COARSE));
        List<Sample> uva = List.of(new Sample(330, 1), new Sample(340, 1));
        assertThat(of(new Spectrum(uva, List.of()))).noneMatch(warning -> warning.startsWith(COARSE));
    }

    private static List<String> of(Spectrum spectrum) {
        return EVALUATION.of(spectrum).warnings();
    }
}
