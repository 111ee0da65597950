package dapple.drawing;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/**
 * How far checks lie from a first value over time, in units of the drawing: days across, percent up.
 *
 * @param line data of a path from the first value through all checks
 * @param band data of a closed path: within the limits
 * @param good where checks within the limits lie
 * @param bad where checks beyond them lie, as data of one path of crosses
 */
public record CheckPlot(PlotFrame frame, String line, String band, List<Spot> good, String bad) {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM", Locale.UK);
    private static final double PERCENT = 100;
    private static final int NUMBERS_UP = 8;
    private static final int DAYS_ACROSS = 5;
    private static final double ARM = 6;

    /** The limits are drawn at most so far from the middle. */
    private static final double MARGIN = 1.6;

    public CheckPlot {
        good = List.copyOf(good);
    }

    /**
     * One check.
     *
     * @param share of the first value by which it is more
     */
    public record Point(LocalDate day, double share, boolean good) {}

    /**
     * What is drawn.
     *
     * @param points one or more, oldest first
     * @param limit the share up to which a check is good
     */
    public record Drawn(LocalDate firstDay, List<Point> points, double limit) {
        public Drawn {
            points = List.copyOf(points);
        }

        private LocalDate earliest() {
            LocalDate first = points.get(0).day();
            return first.isBefore(firstDay) ? first : firstDay;
        }

        private LocalDate latest() {
            LocalDate last = points.get(points.size() - 1).day();
            return last.isAfter(earliest()) ? last : earliest().plusDays(1);
        }

        private double farthest() {
            DoubleStream shares = points.stream().mapToDouble(point -> Math.abs(point.share()));
            return PERCENT * Math.max(MARGIN * limit, 1.1 * shares.max().orElse(0));
        }
    }

    public static CheckPlot of(Drawn drawn, PlotSize size) {
        PlotScale across = size.across(number(drawn.earliest()), number(drawn.latest()));
        PlotScale up = PlotScale.linear(-drawn.farthest(), drawn.farthest(), size.bottom(), size.top());
        List<Spot> checks =
                drawn.points().stream().map(point -> spot(point, across, up)).toList();
        Spot first = new Spot(Rounded.of(across.at(number(drawn.firstDay()))), Rounded.of(up.at(0)));
        List<Spot> bad = drawn.points().stream()
                .filter(point -> !point.good())
                .map(point -> spot(point, across, up))
                .toList();
        return new CheckPlot(
                frame(drawn, size, across, up),
                PathText.open(
                        List.of(Stream.concat(Stream.of(first), checks.stream()).toList())),
                band(drawn.limit(), across, up),
                drawn.points().stream()
                        .filter(Point::good)
                        .map(point -> spot(point, across, up))
                        .toList(),
                bad.isEmpty() ? "" : PathText.open(crosses(bad)));
    }

    private static double number(LocalDate day) {
        return (double) day.toEpochDay();
    }

    private static Spot spot(Point point, PlotScale across, PlotScale up) {
        return new Spot(Rounded.of(across.at(number(point.day()))), Rounded.of(up.at(PERCENT * point.share())));
    }

    private static List<List<Spot>> crosses(List<Spot> at) {
        List<List<Spot>> strokes = new ArrayList<>();
        for (Spot spot : at) {
            strokes.add(List.of(new Spot(spot.x() - ARM, spot.y() - ARM), new Spot(spot.x() + ARM, spot.y() + ARM)));
            strokes.add(List.of(new Spot(spot.x() - ARM, spot.y() + ARM), new Spot(spot.x() + ARM, spot.y() - ARM)));
        }
        return strokes;
    }

    private static String band(double limit, PlotScale across, PlotScale up) {
        double top = up.at(PERCENT * limit);
        double bottom = up.at(-PERCENT * limit);
        return PathText.closed(List.of(List.of(
                new Spot(across.from(), top),
                new Spot(across.to(), top),
                new Spot(across.to(), bottom),
                new Spot(across.from(), bottom))));
    }

    private static PlotFrame frame(Drawn drawn, PlotSize size, PlotScale across, PlotScale up) {
        PlotFrame numbered = size.frame(across, up.marks(NUMBERS_UP));
        return new PlotFrame(
                numbered.width(),
                numbered.height(),
                numbered.left(),
                numbered.right(),
                numbered.top(),
                numbered.bottom(),
                days(drawn, across),
                numbered.up());
    }

    /** Days with the same number of days between them, few enough to be read. */
    private static List<PlotFrame.Mark> days(Drawn drawn, PlotScale across) {
        long whole = drawn.latest().toEpochDay() - drawn.earliest().toEpochDay();
        long step = Math.max(1, (whole + DAYS_ACROSS - 1) / DAYS_ACROSS);
        return Stream.iterate(drawn.earliest(), day -> day.plusDays(step))
                .takeWhile(day -> !day.isAfter(drawn.latest()))
                .map(day -> new PlotFrame.Mark(Rounded.of(across.at(number(day))), DAY.format(day)))
                .toList();
    }
}
