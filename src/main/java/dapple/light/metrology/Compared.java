package dapple.light.metrology;

import dapple.light.quantity.Check;
import java.time.Instant;

/**
 * One reading that is held against others.
 *
 * @param meter key of the meter since its newest calibration: after a new factor it counts as another one
 * @param point key of the point and the quantity
 * @param at when it was read
 * @param lnAmount natural logarithm of the amount as the meter gave it, with the factor in force
 * @param lnUncertainty standard uncertainty of that without what all readings by the meter share, above 0, at most 1
 */
public record Compared(String meter, String point, LampSet lamps, Instant at, double lnAmount, double lnUncertainty) {
    public Compared {
        Check.within("ln of an amount", lnAmount, -100, 100, "");
        Check.within("uncertainty of ln", lnUncertainty, Double.MIN_NORMAL, 1, "");
    }
}
