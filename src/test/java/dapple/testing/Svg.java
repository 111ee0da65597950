package dapple.testing;

import java.util.Locale;

/** A small drawing, written element by element; coordinates have one decimal. */
public final class Svg {
    private static final String FONT = "font-family=\"sans-serif\"";

    private final StringBuilder text = new StringBuilder();

    /**
     * A drawing on white.
     *
     * @param description what somebody who cannot see it should know
     */
    public Svg(int width, int height, String title, String description) {
        text.append(format(
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %d\" role=\"img\" aria-labelledby=\"t d\" %s>%n",
                width, height, FONT));
        text.append(format("<title id=\"t\">%s</title>%n<desc id=\"d\">%s</desc>%n", title, description));
        text.append(format("<rect width=\"%d\" height=\"%d\" fill=\"#ffffff\"/>%n", width, height));
    }

    /** A path by its data, with attributes as they stand in SVG. */
    public Svg path(String data, String attributes) {
        text.append(format("<path d=\"%s\" %s/>%n", data, attributes));
        return this;
    }

    public Svg rectangle(double x, double y, double width, double height, String attributes) {
        text.append(format(
                "<rect x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%.1f\" %s/>%n", x, y, width, height, attributes));
        return this;
    }

    public Svg circle(double x, double y, double radius, String attributes) {
        text.append(format("<circle cx=\"%.1f\" cy=\"%.1f\" r=\"%.1f\" %s/>%n", x, y, radius, attributes));
        return this;
    }

    /**
     * Words.
     *
     * @param anchor start, middle or end
     */
    public Svg words(double x, double y, String anchor, String words, String attributes) {
        text.append(format(
                "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\" %s>%s</text>%n", x, y, anchor, attributes, words));
        return this;
    }

    public String written() {
        return text + "</svg>\n";
    }

    private static String format(String form, Object... arguments) {
        return String.format(Locale.ROOT, form.replace("%n", "\n"), arguments);
    }
}
