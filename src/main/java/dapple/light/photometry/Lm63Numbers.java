package dapple.light.photometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** The numbers of a file, one after the other, however they are spread over lines. */
final class Lm63Numbers {
    private static final Pattern NUMBER =
            Pattern.compile("[+-]?([0-9]{1,15}(\\.[0-9]{0,20})?|\\.[0-9]{1,20})([eE][+-]?[0-9]{1,3})?");
    private static final Pattern BETWEEN = Pattern.compile("\\s*,\\s*|\\s+");

    /** No file has as many. */
    private static final int MOST = 400_000;

    private final List<Token> tokens = new ArrayList<>();
    private final int lastLine;
    private int next;

    private record Token(int line, String text) {}

    /**
     * The numbers from a line on.
     *
     * @param first index of the line
     */
    Lm63Numbers(List<String> lines, int first) throws Lm63Refused {
        for (int index = first; index < lines.size(); index++) {
            String line = lines.get(index).strip();
            if (!line.isEmpty()) {
                for (String text : BETWEEN.split(line, -1)) {
                    tokens.add(new Token(index + 1, text));
                }
            }
            if (tokens.size() > MOST) {
                throw new Lm63Refused(index + 1, "There are more numbers than any such file has.");
            }
        }
        lastLine = lines.size();
    }

    /** The line of the number that was taken last. */
    int line() {
        return next == 0 ? 0 : tokens.get(next - 1).line();
    }

    double number(String what, double low, double high) throws Lm63Refused {
        if (next == tokens.size()) {
            throw new Lm63Refused(lastLine, "The file ends before " + what + ".");
        }
        Token token = tokens.get(next++);
        if (!NUMBER.matcher(token.text()).matches()) {
            throw refused("A number must stand here: " + what + ".");
        }
        double found = Double.parseDouble(token.text());
        if (!(found >= low && found <= high)) {
            throw refused(
                    String.format(Locale.ROOT, "%s must be %s to %s here.", first(what), written(low), written(high)));
        }
        return found;
    }

    int whole(String what, int low, int high) throws Lm63Refused {
        double found = number(what, low, high);
        if (found != Math.rint(found)) {
            throw refused(first(what) + " must be a whole number.");
        }
        return (int) found;
    }

    double[] numbers(String what, int count, double low, double high) throws Lm63Refused {
        double[] found = new double[count];
        for (int index = 0; index < count; index++) {
            found[index] = number(what, low, high);
        }
        return found;
    }

    double[] ascending(String what, int count, double high) throws Lm63Refused {
        double[] found = new double[count];
        for (int index = 0; index < count; index++) {
            found[index] = number(what, 0, high);
            if (index > 0 && !(found[index] > found[index - 1])) {
                throw refused(first(what) + "s must ascend.");
            }
        }
        return found;
    }

    void end() throws Lm63Refused {
        if (next < tokens.size()) {
            throw new Lm63Refused(tokens.get(next).line(), "More stands here than the file says that it has.");
        }
    }

    Lm63Refused refused(String reason) {
        return new Lm63Refused(line(), reason);
    }

    private static String first(String what) {
        String bare = what.startsWith("a ") || what.startsWith("an ") ? what.substring(what.indexOf(' ') + 1) : what;
        return bare.substring(0, 1).toUpperCase(Locale.ROOT) + bare.substring(1);
    }

    private static String written(double number) {
        return number == Math.rint(number) && Math.abs(number) < 1e15
                ? String.format(Locale.ROOT, "%.0f", number)
                : String.valueOf(number);
    }
}
