package dapple;

import dapple.testing.Svg;
import java.util.List;
import java.util.Locale;

/** Costs against sizes, both logarithmic; equal steps are powers of ten, and a dashed line is what linear would be. */
final class CostPlot {
    private static final int WIDTH = 720;
    private static final int HEIGHT = 460;
    private static final double LEFT = 70;
    private static final double RIGHT = 560;
    private static final double TOP = 24;
    private static final double BOTTOM = 400;
    private static final List<String> COLOURS = List.of("#440154", "#21918c", "#b35806");
    private static final List<String> DASHES = List.of("", "stroke-dasharray=\"7 3\"", "stroke-dasharray=\"2 3\"");

    private final List<Cost> costs;
    private final int mostX;
    private final int leastY;
    private final int mostY;

    CostPlot(List<Cost> costs) {
        this.costs = costs;
        this.mostX =
                (int) Math.ceil(costs.stream().mapToDouble(Cost::logCount).max().orElse(1));
        this.leastY =
                (int) Math.floor(costs.stream().mapToDouble(Cost::logCost).min().orElse(0));
        this.mostY =
                (int) Math.ceil(costs.stream().mapToDouble(Cost::logCost).max().orElse(1));
    }

    String drawn() {
        Svg svg = new Svg(
                WIDTH,
                HEIGHT,
                "What a grid costs",
                "Milliseconds against the number of places, lamps and solids, both on logarithmic scales.");
        axes(svg);
        List<String> kinds = costs.stream().map(Cost::what).distinct().toList();
        for (int index = 0; index < kinds.size(); index++) {
            line(svg, kinds.get(index), COLOURS.get(index), DASHES.get(index));
        }
        return svg.written();
    }

    private void axes(Svg svg) {
        for (int power = 0; power <= mostX; power++) {
            svg.path(move(x(power), TOP) + "V" + round(BOTTOM), "stroke=\"#cccccc\"")
                    .words(x(power), BOTTOM + 18, "middle", power(power), "font-size=\"13\"");
        }
        for (int power = leastY; power <= mostY; power++) {
            svg.path(move(LEFT, y(power)) + "H" + round(RIGHT), "stroke=\"#cccccc\"")
                    .words(LEFT - 8, y(power) + 4, "end", power(power), "font-size=\"13\"");
        }
        svg.words((LEFT + RIGHT) / 2, BOTTOM + 42, "middle", "number of places, lamps or solids", "font-size=\"14\"")
                .words(LEFT, TOP - 8, "middle", "ms", "font-size=\"14\"");
    }

    private void line(Svg svg, String what, String colour, String dash) {
        StringBuilder path = new StringBuilder();
        List<Cost> points = Cost.of(costs, what);
        for (Cost cost : points) {
            path.append(path.isEmpty() ? "M" : "L").append(at(cost));
            svg.circle(x(cost.logCount()), y(cost.logCost()), 3.5, "fill=\"" + colour + "\"");
        }
        svg.path(path.toString(), "fill=\"none\" stroke-width=\"2\" stroke=\"" + colour + "\" " + dash);
        Cost last = points.get(points.size() - 1);
        String words = String.format(Locale.ROOT, "%s, power %.2f", what, Cost.exponent(costs, what));
        svg.words(
                x(last.logCount()) + 8,
                y(last.logCost()) + 4,
                "start",
                words,
                "font-size=\"14\" fill=\"" + colour + "\"");
    }

    private String at(Cost cost) {
        return round(x(cost.logCount())) + " " + round(y(cost.logCost()));
    }

    private static String move(double x, double y) {
        return "M" + round(x) + " " + round(y);
    }

    private static String round(double coordinate) {
        return String.format(Locale.ROOT, "%.1f", coordinate);
    }

    private static String power(int power) {
        return power < 0 ? "0." + "0".repeat(-power - 1) + "1" : "1" + "0".repeat(power);
    }

    private double x(double log) {
        return LEFT + (RIGHT - LEFT) * log / mostX;
    }

    private double y(double log) {
        return BOTTOM - (BOTTOM - TOP) * (log - leastY) / (mostY - leastY);
    }
}
