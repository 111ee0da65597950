package dapple.agreement;

import dapple.drawing.CheckPlot;
import dapple.drawing.PlotSize;
import dapple.light.metrology.WeekOfMeter;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/** A meter's weeks against what was expected of them: zero is as expected. */
record WeekChart(CheckPlot wide, CheckPlot narrow) {
    static Optional<WeekChart> of(List<WeekShown> weeks, ZoneId zone) {
        if (weeks.size() < 2) {
            return Optional.empty();
        }
        List<CheckPlot.Point> points = weeks.stream()
                .map(week -> new CheckPlot.Point(
                        LocalDate.ofInstant(week.from(), zone), Math.expm1(week.lnShift()), !week.isBeyond()))
                .toList();
        CheckPlot.Drawn drawn =
                new CheckPlot.Drawn(points.get(0).day().minusDays(7), points, Math.expm1(WeekOfMeter.LEAST_SHIFT));
        return Optional.of(new WeekChart(CheckPlot.of(drawn, PlotSize.WIDE), CheckPlot.of(drawn, PlotSize.NARROW)));
    }
}
