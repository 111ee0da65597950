package dapple.season;

import dapple.drawing.PlotSize;
import dapple.drawing.YearPlot;
import dapple.rig.FittingFacts;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The timers of an enclosure as its pages show them.
 *
 * @param groups those that any lamp with a timer belongs to, in the order of the lines
 * @param untimed lamps of which it is not known when they burn
 * @param inTheDark when basking lamps are lit longest without background light
 * @param wanted one a species whose target names hours of light
 */
record TimersShown(
        LocalDate today,
        List<TimerRow> rows,
        List<GroupHours> groups,
        List<String> untimed,
        Optional<LightYear.InTheDark> inTheDark,
        List<Wanted> wanted,
        Plots plots) {
    /** Two drawings of the same. */
    record Plots(YearPlot wide, YearPlot narrow) {}

    /** Hours a day of the lamps of a group, in the middle of each month. */
    record GroupHours(LampGroup group, List<Double> months) {}

    private static final int MONTHS = 12;
    private static final int MIDDLE_OF_A_MONTH = 15;

    static TimersShown of(LocalDate today, List<TimerRow> rows, LightYear light, List<Wanted> wanted) {
        List<LampGroup> groups =
                Arrays.stream(LampGroup.values()).filter(light::has).toList();
        List<List<Double>> lines = groups.stream().map(light::hours).toList();
        YearPlot.Drawn drawn = new YearPlot.Drawn(
                light.year(), lines, wanted.stream().map(Wanted::band).toList(), today);
        return new TimersShown(
                today,
                rows,
                groups.stream()
                        .map(group -> new GroupHours(group, months(light, lines.get(groups.indexOf(group)))))
                        .toList(),
                untimed(light.fittings()),
                light.worst(),
                wanted,
                new Plots(YearPlot.of(drawn, PlotSize.WIDE), YearPlot.of(drawn, PlotSize.NARROW)));
    }

    private static List<Double> months(LightYear light, List<Double> days) {
        return IntStream.rangeClosed(1, MONTHS)
                .map(month ->
                        light.year().atMonth(month).atDay(MIDDLE_OF_A_MONTH).getDayOfYear())
                .mapToObj(day -> days.get(day - 1))
                .toList();
    }

    private static List<String> untimed(List<FittingFacts> fittings) {
        return fittings.stream()
                .filter(fitting -> fitting.hanging().timer().isEmpty())
                .map(fitting -> fitting.lamp().tag())
                .sorted()
                .toList();
    }

    public boolean isDrawn() {
        return !groups.isEmpty() || !wanted.isEmpty();
    }

    /** Whether basking lamps are on a timer, and no other light is. */
    public boolean isBaskingAlone() {
        List<LampGroup> lit = groups.stream().map(GroupHours::group).toList();
        return lit.contains(LampGroup.BASKING) && !lit.contains(LampGroup.BACKGROUND);
    }

    /** Those whose times are set anew each week. */
    public List<TimerRow> weekly() {
        return rows.stream().filter(TimerRow::isWeekly).toList();
    }
}
