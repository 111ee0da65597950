package dapple.light.field;

import dapple.drawing.Contours;
import dapple.drawing.Contours.Point;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Quantity;
import dapple.light.source.Lamp;
import dapple.testing.Svg;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * The UV index under a lamp in the vertical plane through its middle, on the plane that has most at each place: bands
 * between levels, their borders labelled below the lamp.
 *
 * @param halfLengthMetres of the lamp, as it is seen from the side
 */
record FieldPicture(String title, String description, Lamp lamp, double halfLengthMetres, List<Double> levels) {
    /** From dark to bright in even steps of lightness [viridis2015]; the last is for what is over the last level. */
    private static final List<String> COLOURS = List.of(
            "#440154", "#482475", "#414487", "#355f8d", "#2a788e", "#21918c", "#22a884", "#44bf70", "#7ad151",
            "#bddf26", "#fde725");

    private static final double ACCURACY = 1e-6;
    private static final double STEP_METRES = 0.01;
    private static final double HALF_WIDTH_METRES = 0.7;
    private static final double LEAST_DEPTH_METRES = 0.02;
    private static final int COLUMNS = 141;
    private static final int MIDDLE = 70;
    private static final int ROWS = 69;

    private static final double PIXELS_PER_METRE = 400;
    private static final double LEFT = 64;
    private static final double TOP = 46;
    private static final double LEGEND = 660;
    private static final double BOX = 24;
    private static final double LABELS_APART = 17;
    private static final String LABEL =
            "font-size=\"13\" fill=\"#000000\" stroke=\"#ffffff\" stroke-width=\"3\" paint-order=\"stroke\"";

    String drawn() {
        Svg svg = new Svg(790, 380, title, description);
        svg.rectangle(x(0), y(0), x(COLUMNS - 1) - x(0), y(ROWS - 1) - y(0), "fill=\"" + colour(0) + "\"");
        double[][] amounts = amounts();
        Contours contours = new Contours(amounts);
        for (int index = 0; index < levels.size(); index++) {
            svg.path(data(contours.at(levels.get(index))), "fill=\"" + colour(index + 1) + "\" stroke=\"#ffffff\"");
        }
        labels(svg, amounts);
        double half = halfLengthMetres * PIXELS_PER_METRE;
        svg.rectangle(x(MIDDLE) - half, TOP - 2, 2 * half, 4, "fill=\"#000000\"");
        axes(svg);
        legend(svg);
        return svg.written();
    }

    private double[][] amounts() {
        Field field = Field.of(new Scene(ACCURACY, List.of(lamp), List.of(), List.of()));
        double[][] amounts = new double[ROWS][COLUMNS];
        for (int row = 0; row < ROWS; row++) {
            for (int column = 0; column < COLUMNS; column++) {
                Vec place =
                        new Vec(column * STEP_METRES - HALF_WIDTH_METRES, 0, -LEAST_DEPTH_METRES - row * STEP_METRES);
                amounts[row][column] = field.at(new Receiver(place, new Facing.Maximum()))
                        .values()
                        .getOrDefault(Quantity.UV_INDEX, 0.0);
            }
        }
        return amounts;
    }

    /** Colours as far apart as the number of bands allows. */
    private String colour(int band) {
        return COLOURS.get(Math.round((float) band * (COLOURS.size() - 1) / levels.size()));
    }

    private static double x(double column) {
        return LEFT + column * STEP_METRES * PIXELS_PER_METRE;
    }

    private static double y(double row) {
        return TOP + (row * STEP_METRES + LEAST_DEPTH_METRES) * PIXELS_PER_METRE;
    }

    private static String data(List<List<Point>> lines) {
        return lines.stream()
                .map(line -> line.stream()
                        .map(point -> String.format(Locale.ROOT, "%.1f %.1f", x(point.column()), y(point.row())))
                        .collect(Collectors.joining("L", "M", "Z")))
                .collect(Collectors.joining());
    }

    /** Each level where it is crossed straight below the lamp, as far as there is room, the weakest first. */
    private void labels(Svg svg, double[][] amounts) {
        double lowest = Double.POSITIVE_INFINITY;
        for (double level : levels) {
            for (int row = ROWS - 1; row > 0; row--) {
                double below = amounts[row][MIDDLE];
                double above = amounts[row - 1][MIDDLE];
                double at = y(row - (level - below) / (above - below));
                if (below < level && above >= level && lowest - at >= LABELS_APART) {
                    lowest = at;
                    svg.words(x(MIDDLE), at + 4, "middle", plain(level), LABEL);
                }
            }
        }
    }

    private static String plain(double number) {
        String plain = number == Math.rint(number) ? String.format(Locale.ROOT, "%.0f", number) : "" + number;
        return plain.replace('-', '−');
    }

    private static void axes(Svg svg) {
        double bottom = y(ROWS - 1);
        svg.rectangle(x(0), y(0), x(COLUMNS - 1) - x(0), bottom - y(0), "fill=\"none\" stroke=\"#000000\"");
        for (int step = -6; step <= 6; step += 2) {
            double at = x(MIDDLE + step * 10);
            svg.path(String.format(Locale.ROOT, "M%.1f %.1fv5", at, bottom), "stroke=\"#000000\"")
                    .words(at, bottom + 20, "middle", plain(step / 10.0), "font-size=\"13\"");
        }
        for (int step = 1; step <= 7; step += 2) {
            double at = y(step * 10 - 2);
            svg.path(String.format(Locale.ROOT, "M%.1f %.1fh-5", LEFT, at), "stroke=\"#000000\"")
                    .words(LEFT - 9, at + 4, "end", plain(step / 10.0), "font-size=\"13\"");
        }
        svg.words(x(MIDDLE), bottom + 40, "middle", "m beside the lamp's middle", "font-size=\"13\"")
                .words(LEFT, y(0) - 22, "middle", "m below", "font-size=\"13\"");
    }

    private void legend(Svg svg) {
        svg.words(LEGEND, TOP - 12, "start", "UV index", "font-size=\"13\"");
        for (int band = levels.size(); band >= 0; band--) {
            double at = TOP + (levels.size() - band) * BOX;
            svg.rectangle(LEGEND, at, BOX, BOX, "fill=\"" + colour(band) + "\" stroke=\"#ffffff\"");
            String words = band == 0 ? "under " + plain(levels.get(0)) : "from " + plain(levels.get(band - 1));
            svg.words(LEGEND + BOX + 6, at + 17, "start", words, "font-size=\"13\"");
        }
    }
}
