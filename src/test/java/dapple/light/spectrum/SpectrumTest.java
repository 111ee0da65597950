package dapple.light.spectrum;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import dapple.light.spectrum.Spectrum.Line;
import dapple.light.spectrum.Spectrum.Sample;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SpectrumTest {
    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, -280, 0, 0.999, 1_000_001})
    void namesAWavelengthThatCannotBe(double nanometres) {
        assertThat(pointerOf(List.of(new Sample(nanometres, 0.1)), List.of())).isEqualTo("/samples/0/0");
        assertThat(pointerOf(List.of(), List.of(new Line(254, 1), new Line(nanometres, 1))))
                .isEqualTo("/lines/1/0");
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, -1e-9, 1.1e12})
    void namesAnAmountThatCannotBe(double amount) {
        assertThat(pointerOf(List.of(new Sample(280, 0), new Sample(281, amount)), List.of()))
                .isEqualTo("/samples/1/1");
        assertThat(pointerOf(List.of(), List.of(new Line(254, amount)))).isEqualTo("/lines/0/1");
    }

    @ParameterizedTest
    @ValueSource(doubles = {281, 280, 200})
    void namesTheFirstSampleThatDoesNotAscend(double nanometres) {
        List<Sample> samples = List.of(new Sample(280, 0), new Sample(281, 0), new Sample(nanometres, 0));
        assertThat(pointerOf(samples, List.of())).isEqualTo("/samples/2/0");
    }

    @Test
    void saysWhatIsAllowedAndWhatWasFound() {
        assertThatThrownBy(() -> Spectra.line(254, -2))
                .hasMessage("/lines/0/1: The irradiance must be 0 to 1e12 W/m², was -2.0.");
    }

    @Test
    void takesLinesInAnyOrderAndTwiceAtOneWavelength() {
        List<Line> lines = List.of(new Line(365, 1), new Line(254, 2), new Line(254, 3));
        assertThat(new Spectrum(List.of(), lines).lines()).isEqualTo(lines);
    }

    private static String pointerOf(List<Sample> samples, List<Line> lines) {
        SpectrumRefused refused = catchThrowableOfType(SpectrumRefused.class, () -> new Spectrum(samples, lines));
        assertThat(refused).isNotNull().hasMessageStartingWith(refused.pointer());
        return refused.pointer();
    }
}
