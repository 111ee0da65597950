package dapple.light.quantity;

/**
 * The values that a quantity may have, from low to high, both included; in the quantity's own unit, 95 % unless said.
 *
 * @param low lower end, finite
 * @param high upper end, finite, at least low
 */
public record Interval(double low, double high) {
    public Interval {
        Check.within("low end of an interval", low, -Double.MAX_VALUE, Double.MAX_VALUE, "");
        Check.within("high end of an interval", high, low, Double.MAX_VALUE, "");
    }

    public boolean contains(double amount) {
        return amount >= low && amount <= high;
    }
}
