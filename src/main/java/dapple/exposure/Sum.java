package dapple.exposure;

import dapple.light.dose.DayOfLight;
import dapple.light.dose.DoseRange;
import dapple.light.dose.PeriodSum;
import dapple.light.quantity.ErythemalDose;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** The doses of some days together, and how much of them is known. */
public record Sum(PeriodSum days) {
    static Sum of(List<DayOfLight> days) {
        return new Sum(PeriodSum.of(days));
    }

    /** Over the days of known dose; none where there is no such day. */
    public Optional<DoseRange> total() {
        return days.doseDays() == 0 ? Optional.empty() : Optional.of(days.dose());
    }

    /** The mean of a day of known dose. */
    public Optional<DoseRange> aDay() {
        return total().map(dose -> new DoseRange(
                aDay(dose, DoseRange::lowestEnd),
                aDay(dose, DoseRange::lowest),
                aDay(dose, DoseRange::best),
                aDay(dose, DoseRange::highest),
                aDay(dose, DoseRange::highestEnd)));
    }

    private ErythemalDose aDay(DoseRange dose, Function<DoseRange, ErythemalDose> part) {
        return new ErythemalDose(part.apply(dose).joulesPerSquareMetre() / days.doseDays());
    }

    /** Days on which there was light to be measured. */
    public int expected() {
        return days.days() - days.plannedOff();
    }

    /** Of the days on which there was light to be measured. */
    public Optional<Double> measuredShare() {
        return expected() == 0 ? Optional.empty() : Optional.of((double) days.measured() / expected());
    }
}
