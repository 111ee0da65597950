package dapple.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dapple.drawing.SpectrumPlot.Scaled;
import dapple.drawing.SpectrumPlot.Upward;
import dapple.drawing.SpectrumPlot.Wavelengths;
import dapple.light.spectrum.Spectrum;
import dapple.light.spectrum.Spectrum.Sample;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpectrumPlotTest {
    private static final Wavelengths ULTRAVIOLET = new Wavelengths(280, 400);
    private static final Spectrum RAMP = spectrum(280, 0, 400, 2);
    private static final Spectrum PEAK = spectrum(300, 0, 310, 1, 320, 0);

    private static Spectrum spectrum(double... pairs) {
        List<Sample> samples = IntStream.range(0, pairs.length / 2)
                .mapToObj(index -> new Sample(pairs[2 * index], pairs[2 * index + 1]))
                .toList();
        return new Spectrum(samples, List.of());
    }

    private static SpectrumPlot plot(double factorOfPeak) {
        return SpectrumPlot.of(
                new Scaled(PEAK, factorOfPeak), new Scaled(RAMP, 1), ULTRAVIOLET, Upward.EVENLY, PlotSize.WIDE);
    }

    /**
     * 580 wide, 54 to 566: 300 nm lies at 139.3 and 310 nm at 182; the peak reaches from 250 to the top at 30. Beyond its
     * samples, from 300 to 320 nm, there is no line: what was not measured is not nothing.
     */
    @Test
    void drawsThePeakAtItsWavelengthAndNothingBesideIt() {
        assertThat(plot(2).lamp()).isEqualTo("M139.3 250l42.7-220 42.7 220");
    }

    @Test
    void drawsNoLineWhereALampWasNotMeasuredAtAll() {
        Scaled visible = new Scaled(spectrum(420, 1, 700, 1), 1);
        assertThat(SpectrumPlot.of(visible, new Scaled(RAMP, 1), ULTRAVIOLET, Upward.EVENLY, PlotSize.WIDE)
                        .lamp())
                .isEmpty();
    }

    @Test
    void drawsTheSunAsAnAreaFromTheBaseAndBackToIt() {
        assertThat(plot(1).sun()).startsWith("M54 250").endsWith("z");
    }

    /** By factors from 2e-4, so from 0.0002, to 2: 0.02 lies in the middle, at 140. */
    @Test
    void drawsByFactorsDownToATenThousandth() {
        SpectrumPlot plot = SpectrumPlot.of(
                new Scaled(spectrum(280, 0.02, 400, 0.02), 1),
                new Scaled(RAMP, 1),
                ULTRAVIOLET,
                Upward.BY_FACTORS,
                PlotSize.WIDE);
        assertThat(plot.lamp()).isEqualTo("M54 140l512 0");
        assertThat(plot.frame().up())
                .extracting(PlotFrame.Mark::label)
                .contains("0.001", "1")
                .doesNotContain("0.0001");
    }

    /** Up to the round number above both: 2 with factor 1, 6 of the peak with factor 6. */
    @ParameterizedTest
    @CsvSource({"1, 2", "6, 6"})
    void reachesToTheHigherOfBoth(double factor, String top) {
        List<PlotFrame.Mark> up = plot(factor).frame().up();
        assertThat(up.get(up.size() - 1).label()).startsWith(top);
        assertThat(up.get(up.size() - 1).at()).isEqualTo(plot(factor).frame().top());
    }

    @Test
    void hasRoundWavelengthsAcross() {
        assertThat(plot(1).frame().across())
                .extracting(PlotFrame.Mark::label)
                .containsExactly("280", "300", "320", "340", "360", "380", "400");
    }

    @Test
    void findsTheHighestOfARangeBetweenSamplesToo() {
        assertThat(SpectrumPlot.highest(RAMP, new Wavelengths(280, 340))).isCloseTo(1, within(1e-12));
        assertThat(SpectrumPlot.highest(PEAK, new Wavelengths(330, 400))).isZero();
    }
}
