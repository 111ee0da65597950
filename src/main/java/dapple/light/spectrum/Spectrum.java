package dapple.light.spectrum;

import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;

/**
 * Spectral irradiance: samples, linear between and 0 outside, and beside them lines of no width. Either may be empty. One
 * sample alone spans nothing and so counts nothing.
 *
 * @param samples at strictly ascending wavelengths
 * @param lines in any order; several at one wavelength add up
 */
public record Spectrum(List<Sample> samples, List<Line> lines) {
    /** The shortest wavelength taken, nm: far below all that a lamp emits. */
    static final double SHORTEST_NANOMETRES = 1;

    /** The longest wavelength taken, nm: 1 mm, where infrared ends. */
    static final double LONGEST_NANOMETRES = 1e6;

    /** The largest amount taken, W/m² or W/(m²·nm): far above all light, and no sum of such amounts overflows. */
    static final double LARGEST_AMOUNT = 1e12;

    /**
     * Spectral irradiance at a wavelength.
     *
     * @param wavelengthNanometres 1 to 1,000,000
     * @param wattsPerSquareMetrePerNanometre 0 to 1e12
     */
    public record Sample(double wavelengthNanometres, double wattsPerSquareMetrePerNanometre) {}

    /**
     * All the power of a line, at its wavelength.
     *
     * @param wavelengthNanometres 1 to 1,000,000
     * @param wattsPerSquareMetre irradiance, 0 to 1e12
     */
    public record Line(double wavelengthNanometres, double wattsPerSquareMetre) {}

    /**
     * Takes a spectrum whose numbers can be.
     *
     * @throws SpectrumRefused if a number is NaN or out of its range, or the samples do not ascend
     */
    public Spectrum {
        samples = List.copyOf(samples);
        lines = List.copyOf(lines);
        double shortest = SHORTEST_NANOMETRES;
        for (int index = 0; index < samples.size(); index++) {
            String place = "/samples/" + index;
            Sample sample = samples.get(index);
            checkWavelength(place, sample.wavelengthNanometres(), shortest);
            checkAmount(place, "The spectral irradiance", sample.wattsPerSquareMetrePerNanometre(), "W/(m²·nm)");
            shortest = Math.nextUp(sample.wavelengthNanometres());
        }
        for (int index = 0; index < lines.size(); index++) {
            String place = "/lines/" + index;
            checkWavelength(place, lines.get(index).wavelengthNanometres(), SHORTEST_NANOMETRES);
            checkAmount(place, "The irradiance", lines.get(index).wattsPerSquareMetre(), "W/m²");
        }
    }

    /** Whether the samples span any wavelengths: one alone does not. */
    boolean isSampled() {
        return samples.size() > 1;
    }

    private static void checkWavelength(String place, double nanometres, double shortest) {
        if (!(nanometres >= SHORTEST_NANOMETRES && nanometres <= LONGEST_NANOMETRES)) {
            throw refused(place + "/0", "The wavelength must be 1 to 1,000,000 nm, was %s.", nanometres);
        }
        if (nanometres < shortest) {
            throw refused(place + "/0", "The wavelengths must ascend, %s nm does not.", nanometres);
        }
    }

    private static void checkAmount(String place, String what, double amount, String unit) {
        if (!(amount >= 0 && amount <= LARGEST_AMOUNT)) {
            throw refused(place + "/1", what + " must be 0 to 1e12 " + unit + ", was %s.", amount);
        }
    }

    /** The shortest wavelength at which the spectrum says anything, nm. */
    double shortestNanometres() {
        return wavelengths().min().orElse(SHORTEST_NANOMETRES);
    }

    /** The longest such wavelength, nm. */
    double longestNanometres() {
        return wavelengths().max().orElse(LONGEST_NANOMETRES);
    }

    private DoubleStream wavelengths() {
        return DoubleStream.concat(
                samples.stream().mapToDouble(Sample::wavelengthNanometres),
                lines.stream().mapToDouble(Line::wavelengthNanometres));
    }

    private static SpectrumRefused refused(String pointer, String reason, double found) {
        return new SpectrumRefused(pointer, String.format(Locale.ROOT, reason, found));
    }
}
