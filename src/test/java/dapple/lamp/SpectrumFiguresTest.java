package dapple.lamp;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dapple.light.quantity.Quantity;
import dapple.light.spectrum.Spectrum;
import dapple.light.spectrum.Spectrum.Sample;
import dapple.site.ReferenceSpectra;
import dapple.site.SourceMark;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpectrumFiguresTest {
    private static final LampOutput UV_INDEX =
            new LampOutput(Quantity.UV_INDEX, 7.386, 0.3, 0.05, SourceMark.FROM_MEMORY, "for a test");

    private static final LampOutput LUX =
            new LampOutput(Quantity.ILLUMINANCE, 5000, 0.3, 0.05, SourceMark.FROM_MEMORY, "for a test");

    private final LampSpectra spectra = new LampSpectra();
    private final Spectrum sun = ReferenceSpectra.sun("global_tilt_W_m2_nm");

    /**
     * A lamp with the sun's spectrum and twice the sun's UV index, 3.693, has twice the rest: 45.42 and 324.4 W/m², 109,500
     * lx, as another program integrates ASTM G173-03; see sun-published.csv of the spectra. IR-B: 10.2 % of 1000.4 W/m².
     */
    @ParameterizedTest
    @CsvSource({"UVA, 90.84, 0.001", "IR_A, 648.8, 0.006", "IR_B, 204.1, 0.008", "ILLUMINANCE, 219000, 0.006"})
    void theRestFollowsFromTheUvIndexByTheSpectrum(Quantity quantity, double expected, double relativeTolerance) {
        LampOutput computed = output(complete(List.of(UV_INDEX), sun), quantity).orElseThrow();
        assertThat(computed.reading()).isCloseTo(expected, within(expected * relativeTolerance));
        assertThat(computed.mark()).isEqualTo(SourceMark.COMPUTED);
        assertThat(computed.distanceMetres()).isEqualTo(0.3);
    }

    /** 5 % of the reading and our own 10 % of the ratio, in quadrature: √125 = 11.18 %. */
    @Test
    void theUncertaintyOfTheRatioIsAdded() {
        assertThat(output(complete(List.of(UV_INDEX), sun), Quantity.UVA)
                        .orElseThrow()
                        .relativeUncertainty())
                .isCloseTo(0.1118, within(0.00005));
    }

    @Test
    void whatIsStatedStays() {
        assertThat(output(complete(List.of(UV_INDEX, LUX), sun), Quantity.ILLUMINANCE))
                .contains(LUX);
    }

    @Test
    void withoutAUvIndexNothingFollows() {
        assertThat(complete(List.of(LUX), sun)).containsExactly(LUX);
    }

    /** A lamp's spectrometer often ends at 800 nm: infrared is then unknown, not 0. */
    @Test
    void whatTheSpectrumDoesNotCoverIsNotComputed() {
        assertThat(complete(List.of(UV_INDEX), cut(280, 800)))
                .extracting(LampOutput::quantity)
                .containsExactly(Quantity.UV_INDEX, Quantity.ILLUMINANCE, Quantity.UVA);
    }

    @Test
    void aSpectrumThatBeginsTooLateHasNoUvIndexToComputeFrom() {
        assertThat(complete(List.of(UV_INDEX), cut(300, 4000))).containsExactly(UV_INDEX);
    }

    @Test
    void sunlightHasNoShortWaves() {
        assertThat(figures(sun).hasShortWaves()).isFalse();
        assertThat(figures(sun).below290Share()).isNotNull();
    }

    /** The 254 nm line of mercury, as it comes out of a lamp without its glass. */
    @Test
    void aMercuryLineIsAFault() {
        Spectrum bare = new Spectrum(
                List.of(
                        new Sample(250, 0),
                        new Sample(253, 0),
                        new Sample(254, 0.01),
                        new Sample(255, 0),
                        new Sample(300, 0.01),
                        new Sample(400, 0.01)),
                List.of());
        assertThat(figures(bare).hasShortWaves()).isTrue();
    }

    @Test
    void whetherThereAreShortWavesIsUnknownWhereTheSpectrumBeginsLater() {
        assertThat(figures(cut(290, 4000)).below290Share()).isNull();
    }

    private SpectrumFigures figures(Spectrum spectrum) {
        return SpectrumFigures.of(spectra.summary(spectrum));
    }

    private List<LampOutput> complete(List<LampOutput> stated, Spectrum spectrum) {
        return figures(spectrum).complete(stated, "a spectrum");
    }

    private Spectrum cut(double fromNanometres, double toNanometres) {
        return new Spectrum(
                sun.samples().stream()
                        .filter(sample -> sample.wavelengthNanometres() >= fromNanometres
                                && sample.wavelengthNanometres() <= toNanometres)
                        .toList(),
                List.of());
    }

    private static Optional<LampOutput> output(List<LampOutput> all, Quantity quantity) {
        return all.stream().filter(output -> output.quantity() == quantity).findAny();
    }
}
