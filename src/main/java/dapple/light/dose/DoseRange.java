package dapple.light.dose;

import dapple.light.quantity.ErythemalDose;

/**
 * What an animal could have had, from the shade all day to the basking place all day.
 *
 * @param lowestEnd lowest, at the low end of the readings' interval
 * @param best with the assumed time at the basking place
 * @param highestEnd highest, at the high end of the readings' interval
 */
public record DoseRange(
        ErythemalDose lowestEnd,
        ErythemalDose lowest,
        ErythemalDose best,
        ErythemalDose highest,
        ErythemalDose highestEnd) {
    public static final DoseRange NONE = new DoseRange(
            ErythemalDose.NONE, ErythemalDose.NONE, ErythemalDose.NONE, ErythemalDose.NONE, ErythemalDose.NONE);

    public DoseRange {
        checkOrder(lowestEnd, lowest);
        checkOrder(lowest, best);
        checkOrder(best, highest);
        checkOrder(highest, highestEnd);
    }

    public DoseRange plus(DoseRange other) {
        return new DoseRange(
                lowestEnd.plus(other.lowestEnd),
                lowest.plus(other.lowest),
                best.plus(other.best),
                highest.plus(other.highest),
                highestEnd.plus(other.highestEnd));
    }

    private static void checkOrder(ErythemalDose less, ErythemalDose more) {
        if (less.joulesPerSquareMetre() > more.joulesPerSquareMetre()) {
            throw new IllegalArgumentException("doses of a range must rise, was " + less + " before " + more);
        }
    }
}
