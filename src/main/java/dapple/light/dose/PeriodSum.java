package dapple.light.dose;

import java.util.List;

/**
 * Days together. Those of unknown dose are left out of the sum and counted; they are no days without light.
 *
 * @param measured days measured at the basking place and in shade
 * @param carried days of which one of both, or both, lie between two readings
 * @param dose sum over the days of known dose, planned off at 0 among them
 * @param doseDays how many days the sum is made of
 */
public record PeriodSum(
        int days, int measured, int carried, int unknown, int plannedOff, DoseRange dose, int doseDays) {
    public static PeriodSum of(List<DayOfLight> days) {
        List<DoseRange> known = days.stream()
                .map(DayOfLight::dose)
                .flatMap(dose -> dose.known().stream())
                .toList();
        return new PeriodSum(
                days.size(),
                count(days, Certainty.MEASURED),
                count(days, Certainty.CARRIED),
                count(days, Certainty.UNKNOWN),
                count(days, Certainty.PLANNED_OFF),
                known.stream().reduce(DoseRange.NONE, DoseRange::plus),
                known.size());
    }

    /** Days that the sum leaves out. */
    public int doseUnknownDays() {
        return days - doseDays;
    }

    private static int count(List<DayOfLight> days, Certainty certainty) {
        return Math.toIntExact(
                days.stream().filter(day -> day.certainty() == certainty).count());
    }
}
