package dapple.season;

import dapple.rig.DailyTimer;
import dapple.rig.FittingFacts;
import dapple.rig.HomeDayTimer;
import dapple.rig.LampTimer;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Year;
import java.time.temporal.TemporalAdjusters;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A fitting with its times over a year.
 *
 * @param burntThisYear h; empty: not known
 * @param toBurn over the next twelve months, if nothing is changed, h; empty: not known
 */
record TimerRow(FittingFacts fitting, Year year, Optional<Double> burntThisYear, Optional<Double> toBurn) {
    private static final int MONTHS = 12;
    private static final int MIDDLE_OF_A_MONTH = 15;
    private static final int WEEKS = 53;

    /** From its first day to the next week a timer stays as it is for the middle of it. */
    record Week(LocalDate from, Optional<DailyTimer> times) {}

    public Optional<LampTimer> timer() {
        return fitting.hanging().timer();
    }

    /** Whether its times change from day to day. */
    public boolean isWeekly() {
        return timer().filter(HomeDayTimer.class::isInstance).isPresent();
    }

    /** In the middle of each month; of a timer that is known. */
    public List<Optional<DailyTimer>> months() {
        return IntStream.rangeClosed(1, MONTHS)
                .mapToObj(month -> middleOf(year, month))
                .map(day -> timer().flatMap(timer -> timer.timesOf(day)))
                .toList();
    }

    static LocalDate middleOf(Year year, int month) {
        return year.atMonth(month).atDay(MIDDLE_OF_A_MONTH);
    }

    /** From the Monday on or before the first of January. */
    public List<Week> weeks() {
        LocalDate first = year.atDay(1).with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
        return IntStream.range(0, WEEKS)
                .mapToObj(first::plusWeeks)
                .filter(monday -> monday.getYear() <= year.getValue())
                .map(monday -> new Week(monday, timer().flatMap(timer -> timer.timesOf(monday.plusDays(3)))))
                .toList();
    }
}
