package dapple.api;

import dapple.light.spectrum.Spectrum;
import dapple.light.spectrum.Spectrum.Line;
import dapple.light.spectrum.Spectrum.Sample;
import dapple.light.spectrum.SpectrumRefused;
import java.util.List;
import java.util.function.Function;

/** Reads a spectrum; the first thing that is wrong refuses it. */
final class SpectrumReader {
    static final int MOST_SAMPLES = 100_000;
    static final int MOST_LINES = 10_000;

    private SpectrumReader() {}

    static Spectrum read(Part document) {
        document.object("version", "samples", "lines");
        if (document.need("version").number() != 1) {
            throw document.need("version").fault("The version must be 1.");
        }
        if (!document.has("lines")) {
            document.need("samples");
        }
        List<Sample> samples = document.find("samples")
                .map(part -> pairs(part, MOST_SAMPLES, "samples", pair -> new Sample(first(pair), second(pair))))
                .orElse(List.of());
        List<Line> lines = document.find("lines")
                .map(part -> pairs(part, MOST_LINES, "lines", pair -> new Line(first(pair), second(pair))))
                .orElse(List.of());
        return spectrum(samples, lines);
    }

    private static Spectrum spectrum(List<Sample> samples, List<Line> lines) {
        try {
            return new Spectrum(samples, lines);
        } catch (SpectrumRefused refused) {
            throw Problem.fault(refused.pointer(), refused.reason()).refused();
        }
    }

    private static <T> List<T> pairs(Part part, int most, String what, Function<List<Part>, T> made) {
        return part.atMost(most, what).stream()
                .map(item -> made.apply(item.items(2)))
                .toList();
    }

    private static double first(List<Part> pair) {
        return pair.get(0).number();
    }

    private static double second(List<Part> pair) {
        return pair.get(1).number();
    }
}
