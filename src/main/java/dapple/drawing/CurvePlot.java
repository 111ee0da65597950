package dapple.drawing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/**
 * What a lamp gives against the distance, in units of the drawing: distances across, amounts up by their logarithms.
 *
 * @param line data of a path
 * @param band data of a closed path: what the amounts may be
 * @param stated what was stated or read, where it lies in the drawing
 * @param limit height of a limit, where it lies in the drawing
 */
public record CurvePlot(PlotFrame frame, String line, String band, List<Spot> stated, Optional<Double> limit) {
    public CurvePlot {
        stated = List.copyOf(stated);
    }

    /** Below this share of the amount nothing is drawn of what it may be. */
    private static final double LOWEST_SHARE = 0.05;

    private static final int NUMBERS_UP = 11;

    /**
     * An amount at a distance.
     *
     * @param amount above 0
     */
    public record Point(double centimetres, double amount) {}

    /**
     * What is drawn.
     *
     * @param points two or more, by ascending distance
     * @param relativeSpread what an amount may be off by, over the amount, to each side
     * @param stated amounts that all others follow from
     * @param limit an amount of which a line is drawn where it lies among the others
     */
    public record Curve(List<Point> points, double relativeSpread, List<Point> stated, Optional<Double> limit) {
        public Curve {
            points = List.copyOf(points);
            stated = List.copyOf(stated);
        }

        private double low() {
            return Math.max(LOWEST_SHARE, 1 - relativeSpread);
        }

        private double high() {
            return 1 + relativeSpread;
        }
    }

    public static CurvePlot of(Curve curve, PlotSize size) {
        List<Point> points = curve.points();
        double nearest = points.get(0).centimetres();
        double farthest = points.get(points.size() - 1).centimetres();
        PlotScale across = size.across(nearest, farthest);
        List<Point> stated = curve.stated().stream()
                .filter(point -> point.centimetres() >= nearest && point.centimetres() <= farthest)
                .filter(point -> point.amount() > 0)
                .toList();
        double highest = Math.max(
                amounts(points).max().orElseThrow() * curve.high(),
                amounts(stated).max().orElse(0));
        double lowest = Math.min(
                amounts(points).min().orElseThrow() * curve.low(),
                amounts(stated).min().orElse(Double.MAX_VALUE));
        PlotScale up = PlotScale.logarithmic(lowest, highest, size.bottom(), size.top());
        return new CurvePlot(
                size.frame(across, up.marks(NUMBERS_UP)),
                PathText.open(List.of(spots(points, 1, across, up))),
                band(curve, across, up),
                stated.stream()
                        .map(point -> rounded(spot(point, 1, across, up)))
                        .toList(),
                curve.limit()
                        .filter(limit -> limit > up.low() && limit < up.high())
                        .map(limit -> Rounded.of(up.at(limit))));
    }

    private static DoubleStream amounts(List<Point> points) {
        return points.stream().mapToDouble(Point::amount);
    }

    private static String band(Curve curve, PlotScale across, PlotScale up) {
        List<Spot> upper = spots(curve.points(), curve.high(), across, up);
        List<Spot> lower = new ArrayList<>(spots(curve.points(), curve.low(), across, up));
        Collections.reverse(lower);
        return PathText.closed(
                List.of(Stream.concat(upper.stream(), lower.stream()).toList()));
    }

    private static List<Spot> spots(List<Point> points, double factor, PlotScale across, PlotScale up) {
        return points.stream().map(point -> spot(point, factor, across, up)).toList();
    }

    private static Spot spot(Point point, double factor, PlotScale across, PlotScale up) {
        return new Spot(across.at(point.centimetres()), up.at(point.amount() * factor));
    }

    private static Spot rounded(Spot spot) {
        return new Spot(Rounded.of(spot.x()), Rounded.of(spot.y()));
    }
}
