package dapple.light.quantity;

import java.util.Locale;

/** Argument checks whose messages say what, what is allowed and what was found. NaN fails every one of them. */
public final class Check {
    private Check() {}

    /**
     * Gives back a number that lies within two limits, both allowed.
     *
     * @param unit the unit for the message, empty for a share or an index
     * @throws IllegalArgumentException if the number is below low, above high or NaN
     */
    public static double within(String what, double found, double low, double high, String unit) {
        if (!(found >= low && found <= high)) {
            throw new IllegalArgumentException(
                    String.format(Locale.ROOT, "%s must be %s to %s %s, was %s", what, low, high, unit, found));
        }
        return found;
    }

    /**
     * Gives back a number that is finite and at least 0.
     *
     * @throws IllegalArgumentException if the number is negative, infinite or NaN
     */
    public static double notNegative(String what, double found, String unit) {
        return within(what, found, 0, Double.MAX_VALUE, unit);
    }
}
