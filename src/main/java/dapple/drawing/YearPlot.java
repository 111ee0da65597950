package dapple.drawing;

import java.time.LocalDate;
import java.time.Year;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Hours of light a day over a year, in units of the drawing: its days across, 0 to 24 h up.
 *
 * @param lines data of paths, in the order in which they were given
 * @param bands data of closed paths
 * @param today where a day lies that is marked
 */
public record YearPlot(PlotFrame frame, List<String> lines, List<String> bands, double today) {
    private static final int MOST_HOURS = 24;
    private static final int NUMBERS_UP = 6;
    private static final int MONTHS = 12;

    public YearPlot {
        lines = List.copyOf(lines);
        bands = List.copyOf(bands);
    }

    /** Hours from the least to the most, by month. */
    public record Band(List<Double> low, List<Double> high) {
        public Band {
            low = List.copyOf(low);
            high = List.copyOf(high);
        }
    }

    /**
     * What is drawn.
     *
     * @param lines hours of each day of the year
     * @param today a day that is marked
     */
    public record Drawn(Year year, List<List<Double>> lines, List<Band> bands, LocalDate today) {
        public Drawn {
            lines = List.copyOf(lines);
            bands = List.copyOf(bands);
        }
    }

    public static YearPlot of(Drawn drawn, PlotSize size) {
        PlotScale across = size.across(1, drawn.year().length() + 1.0);
        PlotScale up = PlotScale.linear(0, MOST_HOURS, size.bottom(), size.top());
        PlotFrame numbered = size.frame(across, up.marks(NUMBERS_UP));
        PlotFrame frame = new PlotFrame(
                numbered.width(),
                numbered.height(),
                numbered.left(),
                numbered.right(),
                numbered.top(),
                numbered.bottom(),
                months(drawn.year(), size, across),
                numbered.up());
        return new YearPlot(
                frame,
                drawn.lines().stream().map(line -> line(line, across, up)).toList(),
                drawn.bands().stream()
                        .map(band -> band(drawn.year(), band, across, up))
                        .toList(),
                Rounded.of(across.at(drawn.today().getDayOfYear())));
    }

    private static List<PlotFrame.Mark> months(Year year, PlotSize size, PlotScale across) {
        TextStyle style = size == PlotSize.WIDE ? TextStyle.SHORT_STANDALONE : TextStyle.NARROW_STANDALONE;
        return IntStream.rangeClosed(1, MONTHS)
                .mapToObj(month -> year.atMonth(month))
                .map(month -> new PlotFrame.Mark(
                        Rounded.of(across.at(month.atDay(15).getDayOfYear())),
                        month.getMonth().getDisplayName(style, Locale.ENGLISH)))
                .toList();
    }

    private static String line(List<Double> hours, PlotScale across, PlotScale up) {
        List<Spot> spots = new ArrayList<>();
        for (int day = 1; day <= hours.size(); day++) {
            double amount = hours.get(day - 1);
            spots.add(new Spot(across.at(day), up.at(amount)));
            spots.add(new Spot(across.at(day + 1.0), up.at(amount)));
        }
        return PathText.open(List.of(spots));
    }

    private static String band(Year year, Band band, PlotScale across, PlotScale up) {
        List<Spot> lower = new ArrayList<>(steps(year, band.low(), across, up));
        Collections.reverse(lower);
        return PathText.closed(List.of(Stream.concat(steps(year, band.high(), across, up).stream(), lower.stream())
                .toList()));
    }

    private static List<Spot> steps(Year year, List<Double> hours, PlotScale across, PlotScale up) {
        return IntStream.rangeClosed(1, MONTHS)
                .boxed()
                .flatMap(month -> Stream.of(
                                year.atMonth(month).atDay(1).getDayOfYear(),
                                year.atMonth(month).atEndOfMonth().getDayOfYear() + 1)
                        .map(day -> new Spot(
                                across.at(day), up.at(Math.max(0, Math.min(MOST_HOURS, hours.get(month - 1)))))))
                .toList();
    }
}
