package dapple.light.zone;

import dapple.light.quantity.Check;
import dapple.light.quantity.Interval;

/**
 * The limits between the zones, in the quantity's unit. All are the keeper's settings.
 *
 * @param basking the target for basking, both ends included, at least 0
 * @param shadeHigh most that is shade, 0 to the low end of basking
 * @param ceiling most that may be, at least the high end of basking
 */
public record ZoneTarget(Interval basking, double shadeHigh, double ceiling) {
    public ZoneTarget {
        Check.notNegative("low end of basking", basking.low(), "");
        Check.within("limit of shade", shadeHigh, 0, basking.low(), "");
        Check.within("ceiling", ceiling, basking.high(), Double.MAX_VALUE, "");
    }

    /**
     * The zone of an amount. The graver word rules where limits coincide.
     *
     * @param amount at least 0
     */
    public Zone of(double amount) {
        Check.notNegative("amount", amount, "");
        if (amount > ceiling) {
            return Zone.OVER_CEILING;
        }
        if (amount > basking.high()) {
            return Zone.ABOVE_TARGET;
        }
        if (amount >= basking.low()) {
            return Zone.BASKING;
        }
        return amount <= shadeHigh ? Zone.SHADE : Zone.GRADIENT;
    }

    /** Where a zone begins. */
    double from(Zone zone) {
        return switch (zone) {
            case OVER_CEILING -> ceiling;
            case ABOVE_TARGET -> basking.high();
            case BASKING -> basking.low();
            case GRADIENT -> shadeHigh;
            case SHADE -> 0;
        };
    }

    /** Where a zone ends. */
    double to(Zone zone) {
        return switch (zone) {
            case OVER_CEILING -> Double.POSITIVE_INFINITY;
            case ABOVE_TARGET -> ceiling;
            case BASKING -> basking.high();
            case GRADIENT -> basking.low();
            case SHADE -> shadeHigh;
        };
    }
}
