package dapple.light.spectrum;

import dapple.light.spectrum.Spectrum.Line;
import dapple.light.spectrum.Spectrum.Sample;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/** Spectra to try things on. */
final class Spectra {
    private Spectra() {}

    static Spectrum empty() {
        return new Spectrum(List.of(), List.of());
    }

    static Spectrum line(double nanometres, double wattsPerSquareMetre) {
        return new Spectrum(List.of(), List.of(new Line(nanometres, wattsPerSquareMetre)));
    }

    /** Samples at uneven steps of 0.2 to 12 nm from somewhere in 190 to 310 nm, over four decades, and some lines. */
    static Spectrum seeded(long seed) {
        Random random = new Random(seed);
        List<Sample> samples = new ArrayList<>();
        double nanometres = 190 + 120 * random.nextDouble();
        for (int count = 2 + random.nextInt(200); count > 0; count--) {
            double amount = random.nextInt(6) == 0 ? 0 : Math.pow(10, -4 * random.nextDouble());
            samples.add(new Sample(nanometres, amount));
            nanometres += 0.2 + 11.8 * random.nextDouble();
        }
        List<Line> lines = Stream.generate(() -> new Line(200 + 700 * random.nextDouble(), random.nextDouble()))
                .limit(random.nextInt(4))
                .toList();
        return new Spectrum(samples, lines);
    }

    static Stream<Spectrum> seeded() {
        return Stream.iterate(1L, seed -> seed + 1).limit(60).map(Spectra::seeded);
    }

    static Spectrum scaled(Spectrum spectrum, double factor) {
        return new Spectrum(
                spectrum.samples().stream()
                        .map(sample -> new Sample(
                                sample.wavelengthNanometres(), factor * sample.wattsPerSquareMetrePerNanometre()))
                        .toList(),
                spectrum.lines().stream()
                        .map(line -> new Line(line.wavelengthNanometres(), factor * line.wattsPerSquareMetre()))
                        .toList());
    }

    /** The same straight lines with further samples on them, each step cut into equal parts. */
    static Spectrum cut(Spectrum spectrum, int parts) {
        return resampled(spectrum, steps -> {
            List<Sample> finer = new ArrayList<>();
            for (int index = 0; index + 1 < steps.size(); index++) {
                for (int part = 0; part < parts; part++) {
                    finer.add(between(steps.get(index), steps.get(index + 1), (double) part / parts));
                }
            }
            finer.add(steps.get(steps.size() - 1));
            return finer;
        });
    }

    static Sample between(Sample low, Sample high, double share) {
        double amount = low.wattsPerSquareMetrePerNanometre();
        return new Sample(
                low.wavelengthNanometres() + share * (high.wavelengthNanometres() - low.wavelengthNanometres()),
                amount + share * (high.wattsPerSquareMetrePerNanometre() - amount));
    }

    /** A part of a sampled spectrum, with a sample on its line at both ends. */
    static Spectrum between(Spectrum spectrum, double from, double to) {
        return resampled(spectrum, samples -> {
            List<Sample> part = new ArrayList<>(List.of(at(samples, from)));
            samples.stream()
                    .filter(sample -> sample.wavelengthNanometres() > from && sample.wavelengthNanometres() < to)
                    .forEach(part::add);
            part.add(at(samples, to));
            return part;
        });
    }

    private static Sample at(List<Sample> samples, double nanometres) {
        int next = 1;
        while (samples.get(next).wavelengthNanometres() < nanometres) {
            next++;
        }
        Sample low = samples.get(next - 1);
        double step = samples.get(next).wavelengthNanometres() - low.wavelengthNanometres();
        double amount = between(low, samples.get(next), (nanometres - low.wavelengthNanometres()) / step)
                .wattsPerSquareMetrePerNanometre();
        return new Sample(nanometres, amount);
    }

    /** Each so many samples of a spectrum's, the first among them. */
    static Spectrum each(Spectrum spectrum, int count) {
        return resampled(
                spectrum,
                samples -> Stream.iterate(0, index -> index < samples.size(), index -> index + count)
                        .map(samples::get)
                        .toList());
    }

    private static Spectrum resampled(Spectrum spectrum, UnaryOperator<List<Sample>> how) {
        return new Spectrum(how.apply(spectrum.samples()), spectrum.lines());
    }

    /**
     * Spectral exitance 2πhc²/(λ⁵·(e^(hc/λkT) − 1)) [planck1901], divided by the whole of it, σT⁴: all of it is 1 W/m².
     * Sampled each 0.2 % of the wavelength from 150 nm to 0.5 mm; outside lies less than 0.001 %.
     */
    static Spectrum blackBody(double kelvin) {
        double first = 2 * Math.PI * 6.62607015e-34 * 299792458.0 * 299792458.0;
        double second = 6.62607015e-34 * 299792458.0 / 1.380649e-23;
        double whole = 5.670374419e-8 * Math.pow(kelvin, 4);
        List<Sample> samples = DoubleStream.iterate(
                        150, nanometres -> nanometres < 5e5, nanometres -> nanometres * 1.002)
                .mapToObj(nanometres -> {
                    double metres = nanometres * 1e-9;
                    double perMetre = first / (Math.pow(metres, 5) * Math.expm1(second / (metres * kelvin)));
                    return new Sample(nanometres, perMetre * 1e-9 / whole);
                })
                .toList();
        return new Spectrum(samples, List.of());
    }
}
