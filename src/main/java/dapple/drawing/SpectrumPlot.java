package dapple.drawing;

import dapple.light.spectrum.Spectrum;
import dapple.light.spectrum.Spectrum.Sample;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * A lamp's spectrum as a line over the sun's as an area, upward from 0, in units of the drawing.
 *
 * @param lamp data of a path, open; only where the lamp was sampled, and empty where it was not at all
 * @param sun data of a path, closed
 */
public record SpectrumPlot(PlotFrame frame, String lamp, String sun) {
    private static final double LOWEST_SHARE = 1e-4;
    private static final int NUMBERS_UP = 11;

    /**
     * A spectrum and what its amounts are multiplied by, so that two can be compared.
     *
     * @param factor above 0
     */
    public record Scaled(Spectrum spectrum, double factor) {}

    /** Wavelengths that are drawn. */
    public record Wavelengths(double fromNanometres, double toNanometres) {}

    /** How amounts rise. */
    public enum Upward {
        /** Evenly, from 0. */
        EVENLY,
        /** By factors, from a ten-thousandth of the highest; what is less lies on the base. */
        BY_FACTORS
    }

    public static SpectrumPlot of(Scaled lamp, Scaled sun, Wavelengths drawn, Upward upward, PlotSize size) {
        List<Sample> ofLamp = sampled(lamp, drawn);
        List<Sample> ofSun = places(sun, drawn);
        double highest = Stream.concat(ofLamp.stream(), ofSun.stream())
                .mapToDouble(Sample::wattsPerSquareMetrePerNanometre)
                .max()
                .orElse(0);
        PlotScale across = size.across(drawn.fromNanometres(), drawn.toNanometres());
        PlotScale up = scale(highest > 0 ? highest : 1, upward, size);
        List<Spot> area = new ArrayList<>(spots(ofSun, across, up));
        area.add(0, new Spot(across.from(), size.bottom()));
        area.add(new Spot(across.to(), size.bottom()));
        return new SpectrumPlot(
                size.frame(across, up.marks(NUMBERS_UP)),
                ofLamp.isEmpty() ? "" : PathText.open(List.of(spots(ofLamp, across, up))),
                PathText.closed(List.of(area)));
    }

    private static PlotScale scale(double highest, Upward upward, PlotSize size) {
        return upward == Upward.EVENLY
                ? PlotScale.fromNothing(highest, size.bottom(), size.top())
                : PlotScale.logarithmic(highest * LOWEST_SHARE, highest, size.bottom(), size.top());
    }

    /** The largest amount of a spectrum in a range, in its own unit; 0 where it has none. */
    public static double highest(Spectrum spectrum, Wavelengths drawn) {
        return places(new Scaled(spectrum, 1), drawn).stream()
                .mapToDouble(Sample::wattsPerSquareMetrePerNanometre)
                .max()
                .orElse(0);
    }

    /** Only where the spectrum says anything. */
    private static List<Sample> sampled(Scaled scaled, Wavelengths drawn) {
        List<Sample> samples = scaled.spectrum().samples();
        if (samples.size() < 2) {
            return List.of();
        }
        double from = Math.max(drawn.fromNanometres(), samples.get(0).wavelengthNanometres());
        double to =
                Math.min(drawn.toNanometres(), samples.get(samples.size() - 1).wavelengthNanometres());
        return from < to ? places(scaled, new Wavelengths(from, to)) : List.of();
    }

    private static List<Spot> spots(List<Sample> places, PlotScale across, PlotScale up) {
        return places.stream()
                .map(sample -> new Spot(
                        across.at(sample.wavelengthNanometres()), up.at(sample.wattsPerSquareMetrePerNanometre())))
                .toList();
    }

    /** The samples within a range and what is at its ends, scaled. */
    private static List<Sample> places(Scaled scaled, Wavelengths drawn) {
        List<Sample> samples = scaled.spectrum().samples();
        double from = drawn.fromNanometres();
        double to = drawn.toNanometres();
        Stream<Sample> inside = samples.stream()
                .filter(sample -> sample.wavelengthNanometres() > from && sample.wavelengthNanometres() < to);
        return Stream.of(Stream.of(at(samples, from)), inside, Stream.of(at(samples, to)))
                .flatMap(part -> part)
                .map(sample -> new Sample(
                        sample.wavelengthNanometres(), scaled.factor() * sample.wattsPerSquareMetrePerNanometre()))
                .toList();
    }

    /** Straight between samples, 0 outside. */
    private static Sample at(List<Sample> samples, double nanometres) {
        int above = 0;
        while (above < samples.size() && samples.get(above).wavelengthNanometres() < nanometres) {
            above++;
        }
        boolean isOutside =
                above == samples.size() || (above == 0 && samples.get(0).wavelengthNanometres() > nanometres);
        return new Sample(nanometres, isOutside ? 0 : between(samples, above, nanometres));
    }

    private static double between(List<Sample> samples, int above, double nanometres) {
        Sample high = samples.get(above);
        Sample low = samples.get(Math.max(0, above - 1));
        double width = high.wavelengthNanometres() - low.wavelengthNanometres();
        double share = width > 0 ? (nanometres - low.wavelengthNanometres()) / width : 1;
        return (1 - share) * low.wattsPerSquareMetrePerNanometre() + share * high.wattsPerSquareMetrePerNanometre();
    }
}
