package dapple.rig;

import java.time.LocalDate;
import java.time.Month;
import java.util.List;
import java.util.Optional;

/**
 * A timer with other times each month, from its first day on.
 *
 * @param months twelve, January first; empty: off all the month, as basking lamps over a winter's rest
 */
public record MonthlyTimer(List<Optional<DailyTimer>> months) implements LampTimer {
    public static final int MONTHS = 12;

    public MonthlyTimer {
        months = List.copyOf(months);
        if (months.size() != MONTHS) {
            throw new IllegalArgumentException("a timer by month must have 12 months, had " + months.size());
        }
    }

    public Optional<DailyTimer> of(Month month) {
        return months.get(month.getValue() - 1);
    }

    @Override
    public Optional<DailyTimer> timesOf(LocalDate day) {
        return of(day.getMonth());
    }
}
