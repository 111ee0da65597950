package dapple.lamp;

import dapple.drawing.PlotSize;
import dapple.drawing.SpectrumPlot;
import dapple.drawing.SpectrumPlot.Scaled;
import dapple.drawing.SpectrumPlot.Upward;
import dapple.drawing.SpectrumPlot.Wavelengths;
import dapple.light.quantity.UvIndex;
import dapple.light.spectrum.Range;
import dapple.light.spectrum.Spectrum;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A lamp's spectrum over the sun's.
 *
 * @param plots the ultraviolet, where the lamp's UV index is known, and the whole, where it is sampled beyond
 */
record SpectrumPlots(List<Pair> plots) {
    private static final double ULTRAVIOLET_FROM = 280;
    private static final double ULTRAVIOLET_TO = 400;

    /** Beyond it the sun's spectrum is low and lamps are seldom measured. */
    private static final double LONGEST = 2500;

    /** Lamps whose glass is missing have lines from here; the sun has nothing. */
    private static final double SHORTEST = 250;

    /** Milliwatts of a watt, and the UV index 1. */
    private static final double MILLI = 1000;

    /** Below it a spectrum is said to have no UV index. */
    private static final double LEAST_UV_INDEX = 1e-6;

    /** Both spectra are drawn for the same UV index of 1, in mW/(m²·nm); or each with 1 as its maximum. */
    enum Compared {
        AT_THE_SAME_UV_INDEX,
        EACH_TO_ITS_MAXIMUM
    }

    /** Two drawings of the same. */
    record Pair(Compared compared, Wavelengths drawn, SpectrumPlot wide, SpectrumPlot narrow) {}

    /** A spectrum and its UV index. */
    record Weighed(Spectrum spectrum, Optional<UvIndex> uvIndex) {}

    static SpectrumPlots of(Weighed lamp, Weighed sun, Range sampled) {
        double to = Math.min(LONGEST, sampled.toNanometres());
        Wavelengths ultraviolet = new Wavelengths(
                Math.min(ULTRAVIOLET_FROM, Math.max(SHORTEST, sampled.fromNanometres())), ULTRAVIOLET_TO);
        Wavelengths all = new Wavelengths(ultraviolet.fromNanometres(), to);
        return new SpectrumPlots(Stream.of(
                        atTheSameUvIndex(lamp, sun, ultraviolet),
                        to > ULTRAVIOLET_TO
                                ? eachToItsMaximum(lamp.spectrum(), sun.spectrum(), all)
                                : Optional.<Pair>empty())
                .flatMap(Optional::stream)
                .toList());
    }

    private static Optional<Pair> atTheSameUvIndex(Weighed lamp, Weighed sun, Wavelengths drawn) {
        return lamp.uvIndex()
                .filter(uvIndex -> uvIndex.index() > LEAST_UV_INDEX)
                .flatMap(ofLamp -> sun.uvIndex()
                        .map(ofSun -> pair(
                                Compared.AT_THE_SAME_UV_INDEX,
                                new Scaled(lamp.spectrum(), MILLI / ofLamp.index()),
                                new Scaled(sun.spectrum(), MILLI / ofSun.index()),
                                drawn)));
    }

    private static Optional<Pair> eachToItsMaximum(Spectrum lamp, Spectrum sun, Wavelengths drawn) {
        double ofLamp = SpectrumPlot.highest(lamp, drawn);
        double ofSun = SpectrumPlot.highest(sun, drawn);
        return ofLamp > 0 && ofSun > 0
                ? Optional.of(pair(
                        Compared.EACH_TO_ITS_MAXIMUM, new Scaled(lamp, 1 / ofLamp), new Scaled(sun, 1 / ofSun), drawn))
                : Optional.empty();
    }

    private static Pair pair(Compared compared, Scaled lamp, Scaled sun, Wavelengths drawn) {
        Upward upward = compared == Compared.AT_THE_SAME_UV_INDEX ? Upward.BY_FACTORS : Upward.EVENLY;
        return new Pair(
                compared,
                drawn,
                SpectrumPlot.of(lamp, sun, drawn, upward, PlotSize.WIDE),
                SpectrumPlot.of(lamp, sun, drawn, upward, PlotSize.NARROW));
    }
}
