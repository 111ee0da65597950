package dapple.light.expectation;

import dapple.light.quantity.Check;
import java.util.List;

/**
 * How fast lamps are taken to lose light while nobody has measured it: E(t) = E · e^(−loss · days), at the rate that is usual
 * of their class.
 *
 * @param lossPerDay as a natural logarithm, at least 0
 */
public record Ageing(double lossPerDay) {
    /** What loses nothing: temperatures, and points whose lamps are not known. */
    public static final Ageing NONE = new Ageing(0);

    private static final double HOURS_PER_DAY = 24;

    public Ageing {
        Check.notNegative("loss", lossPerDay, "a day");
    }

    /**
     * Of one lamp.
     *
     * @param lossPerHour as a natural logarithm, of an hour that it burns, at least 0
     * @param hoursADay how long it burns in a day, 0 to 24
     */
    public static Ageing of(double lossPerHour, double hoursADay) {
        Check.notNegative("loss", lossPerHour, "an hour");
        return new Ageing(lossPerHour * Check.within("hours a day", hoursADay, 0, HOURS_PER_DAY, "h"));
    }

    /** Of several lamps over one point, each taken to give as much; of none, {@link #NONE}. */
    public static Ageing mean(List<Ageing> lamps) {
        return new Ageing(
                lamps.stream().mapToDouble(Ageing::lossPerDay).average().orElse(0));
    }

    /** What is lost in so many days, as a natural logarithm, at least 0. */
    double lossIn(double days) {
        return days * lossPerDay;
    }
}
