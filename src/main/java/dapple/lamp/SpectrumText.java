package dapple.lamp;

import dapple.light.spectrum.Spectrum;
import dapple.light.spectrum.Spectrum.Sample;
import dapple.light.spectrum.SpectrumRefused;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A spectrum as text: a wavelength, nm, and a spectral irradiance, W/(m²·nm), on each line, parted by a comma, a semicolon, a
 * tab or blanks. Lines before the first number are headings; empty ones and those that begin with # are passed over. Where
 * semicolons or tabs part the two, a comma is a decimal point.
 */
final class SpectrumText {
    static final int MOST_ROWS = 5000;

    private static final int FEWEST_ROWS = 2;
    private static final Pattern NUMBER = Pattern.compile("[+-]?[0-9]{1,15}(\\.[0-9]{0,30})?([eE][+-]?[0-9]{1,4})?");
    private static final Pattern CONTROL = Pattern.compile("[\\p{Cntrl}&&[^\\t]]");

    private final List<Sample> samples = new ArrayList<>();
    private final List<Integer> lineOfSample = new ArrayList<>();

    private SpectrumText() {}

    /** What came of reading. */
    sealed interface Outcome {
        record Read(Spectrum spectrum) implements Outcome {}

        /**
         * Nothing was taken.
         *
         * @param line the line at fault, counted from 1; 0 for the whole
         * @param reason a whole sentence
         */
        record Refused(int line, String reason) implements Outcome {}
    }

    static Outcome read(String content) {
        return new SpectrumText().outcome(content.split("\\R", -1));
    }

    private Outcome outcome(String[] lines) {
        for (int index = 0; index < lines.length; index++) {
            Optional<String> fault = take(lines[index].strip(), index + 1);
            if (fault.isPresent()) {
                return new Outcome.Refused(index + 1, fault.get());
            }
        }
        if (samples.size() < FEWEST_ROWS) {
            return new Outcome.Refused(0, "A spectrum needs two rows or more, each a wavelength and an amount.");
        }
        return spectrum();
    }

    private Outcome spectrum() {
        try {
            return new Outcome.Read(new Spectrum(samples, List.of()));
        } catch (SpectrumRefused refused) {
            int sample = Integer.parseInt(refused.pointer().split("/", -1)[2]);
            return new Outcome.Refused(lineOfSample.get(sample), refused.reason());
        }
    }

    private Optional<String> take(String line, int number) {
        if (CONTROL.matcher(line).find()) {
            return Optional.of("This is not text.");
        }
        if (line.isEmpty() || line.startsWith("#")) {
            return Optional.empty();
        }
        List<String> cells = cells(line);
        boolean isHeading = samples.isEmpty() && !NUMBER.matcher(cells.get(0)).matches();
        if (isHeading) {
            return Optional.empty();
        }
        if (cells.size() != 2
                || !cells.stream().allMatch(cell -> NUMBER.matcher(cell).matches())) {
            return Optional.of("There must be two numbers: the wavelength in nm and the amount in W/(m²·nm).");
        }
        if (samples.size() == MOST_ROWS) {
            return Optional.of("A spectrum may have at most " + MOST_ROWS + " rows.");
        }
        samples.add(new Sample(Double.parseDouble(cells.get(0)), Double.parseDouble(cells.get(1))));
        lineOfSample.add(number);
        return Optional.empty();
    }

    private static List<String> cells(String line) {
        boolean hasDecimalCommas = line.contains(";") || line.contains("\t");
        String dotted = hasDecimalCommas ? line.replace(',', '.') : line;
        return List.of(dotted.split("\\s*[,;\\t]\\s*|\\s+", -1));
    }
}
