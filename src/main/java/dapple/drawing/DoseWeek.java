package dapple.drawing;

import dapple.light.dose.PeriodSum;
import java.time.LocalDate;

/**
 * The dose of a week, as a mean a day over the days of known dose.
 *
 * @param from its first day
 * @param lowestUviHours lowest, best and highest in UVI·h a day; 0 without meaning where the kind is unknown
 * @param isPartlyUnknown whether days are left out
 * @param words what somebody reads at the bar
 */
public record DoseWeek(
        LocalDate from,
        Kind kind,
        double lowestUviHours,
        double bestUviHours,
        double highestUviHours,
        boolean isPartlyUnknown,
        String words) {

    /** How a week is drawn. */
    public enum Kind {
        /** At least one day was measured. */
        MEASURED,
        /** All that is known lies between readings of other weeks. */
        CARRIED,
        UNKNOWN,
        PLANNED_OFF
    }

    public static DoseWeek of(LocalDate from, PeriodSum week, String words) {
        double days = Math.max(1, week.doseDays());
        return new DoseWeek(
                from,
                kind(week),
                week.dose().lowest().uviHours() / days,
                week.dose().best().uviHours() / days,
                week.dose().highest().uviHours() / days,
                week.doseUnknownDays() > 0,
                words);
    }

    private static Kind kind(PeriodSum week) {
        if (week.doseDays() == 0) {
            return Kind.UNKNOWN;
        }
        if (week.doseDays() == week.plannedOff()) {
            return Kind.PLANNED_OFF;
        }
        return week.measured() > 0 ? Kind.MEASURED : Kind.CARRIED;
    }
}
