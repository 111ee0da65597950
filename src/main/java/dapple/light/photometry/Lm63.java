package dapple.light.photometry;

import dapple.light.photometry.PhotometricFile.Opening;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads files in the form of LM-63 [iesna2002]: editions of 1986, 1991, 1995 and 2002, type C photometry, TILT=NONE. Whatever else
 * such a file may hold is refused with its line. Illuminance alone comes of it.
 */
public final class Lm63 {
    static final int MOST_CHARACTERS = 2_000_000;
    static final int MOST_ANGLES = 721;

    private static final Map<String, Integer> EDITIONS =
            Map.of("IESNA91", 1991, "IESNA:LM-63-1991", 1991, "IESNA:LM-63-1995", 1995, "IESNA:LM-63-2002", 2002);

    private static final Pattern KEYWORD = Pattern.compile("\\[([A-Za-z0-9_]{1,30})]\\s*(.*)");
    private static final Pattern CONTROL = Pattern.compile("[\\p{Cntrl}&&[^\\t]]");
    private static final int TYPE_C = 1;
    private static final int FEET = 1;
    private static final double METRES_PER_FOOT = 0.3048;
    private static final double LARGEST = 1e9;
    private static final double LONGEST = 1000;
    private static final double ABSOLUTE = -1;

    private final List<String> lines;

    private Lm63(List<String> lines) {
        this.lines = lines;
    }

    /** What came of reading. */
    public sealed interface Outcome {
        record Read(PhotometricFile file) implements Outcome {}

        /**
         * Nothing was taken.
         *
         * @param line the line at fault, counted from 1; 0 for the whole
         * @param reason a whole sentence
         */
        record Refused(int line, String reason) implements Outcome {}
    }

    public static Outcome read(String content) {
        try {
            if (content.isBlank() || content.length() > MOST_CHARACTERS) {
                throw new Lm63Refused(0, "The file must have 1 to 2,000,000 characters.");
            }
            return new Outcome.Read(new Lm63(content.lines().toList()).file());
        } catch (Lm63Refused refused) {
            return new Outcome.Refused(refused.line(), refused.reason());
        }
    }

    private PhotometricFile file() throws Lm63Refused {
        int edition = edition();
        int tilt = tilt();
        Map<String, String> keywords = edition == 1986 ? Map.of() : keywords(tilt);
        return body(edition, keywords, new Lm63Numbers(lines, tilt + 1));
    }

    /** Files of 1986 have no first line of their own. */
    private int edition() throws Lm63Refused {
        String first = lines.get(0).strip().toUpperCase(Locale.ROOT);
        Integer known = EDITIONS.get(first);
        if (known == null && first.startsWith("IES")) {
            throw new Lm63Refused(1, "This edition is not read. Read are LM-63-1986, 1991, 1995 and 2002.");
        }
        return known == null ? 1986 : known;
    }

    private int tilt() throws Lm63Refused {
        for (int index = 0; index < lines.size(); index++) {
            String line = lines.get(index).strip();
            if (CONTROL.matcher(line).find()) {
                throw new Lm63Refused(index + 1, "This is not text.");
            }
            if (line.toUpperCase(Locale.ROOT).startsWith("TILT")) {
                if (!line.replace(" ", "").equalsIgnoreCase("TILT=NONE")) {
                    throw new Lm63Refused(
                            index + 1,
                            "Light that changes with the lamp's tilt is not read: TILT=NONE must stand here.");
                }
                return index;
            }
        }
        throw new Lm63Refused(0, "There is no line TILT=NONE, so this is no file of that kind.");
    }

    private Map<String, String> keywords(int tilt) throws Lm63Refused {
        Map<String, String> keywords = new LinkedHashMap<>();
        String last = "";
        for (int index = 1; index < tilt; index++) {
            String line = lines.get(index).strip();
            Matcher keyword = KEYWORD.matcher(line);
            if (keyword.matches()) {
                String name = keyword.group(1).toUpperCase(Locale.ROOT);
                last = name.equals("MORE") ? last : name;
                keywords.merge(last, keyword.group(2).strip(), (before, more) -> (before + " " + more).strip());
            } else if (!line.isEmpty()) {
                throw new Lm63Refused(index + 1, "Before TILT each line must begin with a keyword in brackets.");
            }
        }
        return keywords;
    }

    private static PhotometricFile body(int edition, Map<String, String> keywords, Lm63Numbers numbers)
            throws Lm63Refused {
        int lamps = numbers.whole("the number of lamps", 1, 1000);
        Optional<Double> lumens = lumens(numbers);
        double multiplier = numbers.number("the multiplier of the candela values", 1e-9, LARGEST);
        int thetas = numbers.whole("the number of vertical angles", 2, MOST_ANGLES);
        int phis = numbers.whole("the number of horizontal angles", 1, MOST_ANGLES);
        if (numbers.whole("the type of photometry", 1, 3) != TYPE_C) {
            throw numbers.refused("Type C alone is read, which is 1 here; types A and B measure other angles.");
        }
        Opening opening = opening(numbers);
        double factor = multiplier * factors(numbers, edition);
        double watts = numbers.number("the input watts", 0, LARGEST);
        Intensities intensities = intensities(numbers, thetas, phis, factor);
        numbers.end();
        return new PhotometricFile(edition, keywords, lamps, lumens, opening, watts, intensities);
    }

    /** Of one lamp; −1 where the intensities are absolute. */
    private static Optional<Double> lumens(Lm63Numbers numbers) throws Lm63Refused {
        double lumens = numbers.number("the lumens of a lamp", ABSOLUTE, LARGEST);
        if (lumens == ABSOLUTE) {
            return Optional.empty();
        }
        if (!(lumens > 0)) {
            throw numbers.refused("The lumens of a lamp must be above 0, or −1 where the intensities are absolute.");
        }
        return Optional.of(lumens);
    }

    private static Opening opening(Lm63Numbers numbers) throws Lm63Refused {
        double metres = numbers.whole("the unit of lengths", 1, 2) == FEET ? METRES_PER_FOOT : 1;
        double[] sizes = numbers.numbers("a size of what shines", 3, -LONGEST, LONGEST);
        return new Opening(Math.abs(sizes[0]) * metres, Math.abs(sizes[1]) * metres, Math.abs(sizes[2]) * metres);
    }

    /** The ballast's factor, and what since 1995 has been kept for later use and must be 1. */
    private static double factors(Lm63Numbers numbers, int edition) throws Lm63Refused {
        double ballast = numbers.number("the ballast factor", 1e-6, 1000);
        double second = numbers.number("the factor after that of the ballast", 1e-6, 1000);
        if (edition >= 1995 && second != 1) {
            throw numbers.refused("This number has no use in this edition and must be 1.");
        }
        return ballast * second;
    }

    private static Intensities intensities(Lm63Numbers numbers, int thetas, int phis, double factor)
            throws Lm63Refused {
        double[] theta = numbers.ascending("a vertical angle", thetas, 180);
        if (!((theta[0] == 0 || theta[0] == 90) && (theta[thetas - 1] == 90 || theta[thetas - 1] == 180))) {
            throw numbers.refused("The vertical angles must go from 0 or 90 to 90 or 180.");
        }
        double[] phi = numbers.ascending("a horizontal angle", phis, 360);
        double last = phi[phis - 1];
        if (phi[0] != 0 || !(last == 0 || last == 90 || last == 180 || last == 360)) {
            throw numbers.refused("The horizontal angles must go from 0 to 0, 90, 180 or 360.");
        }
        double[][] candela = new double[phis][thetas];
        for (double[] row : candela) {
            for (int column = 0; column < thetas; column++) {
                row[column] = factor * numbers.number("an intensity", 0, LARGEST);
                if (!(row[column] <= LARGEST)) {
                    throw numbers.refused("With the factors of the file this intensity is above 1,000,000,000 cd.");
                }
            }
        }
        return new Intensities(theta, phi, candela);
    }
}
