package dapple.practice;

import dapple.drawing.CheckPlot;
import dapple.drawing.PlotSize;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What a meter showed under its reference lamp over time, against what it showed at first.
 *
 * @param rows oldest first
 */
record LampChart(CheckPlot wide, CheckPlot narrow, List<Row> rows) {
    LampChart {
        rows = List.copyOf(rows);
    }

    /**
     * One check.
     *
     * @param share of the first amount by which it was more
     */
    record Row(LocalDate day, double amount, double share, boolean good) {}

    /** None before the second value. */
    static Optional<LampChart> of(ReferenceLampFacts lamp, List<MeterCheckFacts> checks, ZoneId zone) {
        List<Row> rows = checks.stream()
                .filter(check -> check.lampId().equals(Optional.of(lamp.id())))
                .sorted(Comparator.comparing(MeterCheckFacts::at))
                .map(check -> new Row(
                        LocalDate.ofInstant(check.at(), zone),
                        check.amount(),
                        check.amount() / lamp.firstAmount() - 1,
                        check.good()))
                .toList();
        return rows.isEmpty() ? Optional.empty() : Optional.of(drawn(lamp, rows, zone));
    }

    private static LampChart drawn(ReferenceLampFacts lamp, List<Row> rows, ZoneId zone) {
        List<CheckPlot.Point> points = rows.stream()
                .map(row -> new CheckPlot.Point(row.day(), row.share(), row.good()))
                .toList();
        CheckPlot.Drawn drawn =
                new CheckPlot.Drawn(LocalDate.ofInstant(lamp.firstAt(), zone), points, Tolerance.LAMP_SHARE);
        return new LampChart(CheckPlot.of(drawn, PlotSize.WIDE), CheckPlot.of(drawn, PlotSize.NARROW), rows);
    }
}
