package dapple.light.spectrum;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dapple.light.spectrum.Spectrum.Line;
import dapple.light.spectrum.Spectrum.Sample;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RangeTest {
    @Test
    void reachesOverSamplesAndLines() {
        Spectrum spectrum = new Spectrum(
                List.of(new Sample(280, 1), new Sample(400, 1)), List.of(new Line(546, 1), new Line(254, 1)));
        assertThat(Range.of(spectrum)).isEqualTo(new Range(254, 546));
    }

    @Test
    void isEverythingWithoutSamples() {
        assertThat(Range.of(Spectra.line(254, 1))).isEqualTo(Range.ALL);
        assertThat(Range.of(Spectra.empty())).isEqualTo(Range.ALL);
    }

    @ParameterizedTest
    @CsvSource({"0, 400", "NaN, 400", "280, NaN", "280, Infinity", "280, 280", "400, 280", "280, 1000001"})
    void refusesWhatIsNone(double from, double to) {
        assertThatThrownBy(() -> new Range(from, to)).isInstanceOf(IllegalArgumentException.class);
    }
}
