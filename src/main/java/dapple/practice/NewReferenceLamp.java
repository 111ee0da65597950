package dapple.practice;

import dapple.light.quantity.Check;
import java.time.Instant;

/**
 * A lamp to check a meter by.
 *
 * @param setUp how lamp and sensor are put: distance, holder, warm-up
 * @param firstAmount as the meter shows it now, above 0, in the unit of its quantity
 */
public record NewReferenceLamp(String name, String setUp, double firstAmount, Instant firstAt) {
    static final double MOST = 9_999_999;

    public NewReferenceLamp {
        Check.within("first amount", firstAmount, Double.MIN_NORMAL, MOST, "");
    }
}
