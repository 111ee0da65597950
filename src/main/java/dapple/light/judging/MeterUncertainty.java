package dapple.light.judging;

import dapple.light.quantity.Check;
import dapple.light.quantity.Interval;
import dapple.light.quantity.Quantity;

/**
 * Expanded uncertainty of a hand-held reading y: U = √((f·y)² + a² + (2·r/√12)²), coverage factor 2 (about 95 %): a
 * share f of the reading, a fixed part a, and the rectangular distribution of the display's step r [jcgm100].
 *
 * @param share f, from 0 to below 1
 * @param absolute a, at least 0, in the unit of the quantity
 * @param resolution r, smallest step of the display, above 0, in the unit of the quantity
 */
public record MeterUncertainty(double share, double absolute, double resolution) {
    /** Expanded uncertainty of a hand-held UV-index reading under lamps: 20 % (common practice, no source). */
    public static final double DEFAULT_SHARE = 0.20;

    /** Of a hand-held illuminance or irradiance reading: 10 % (from memory, unverified: a mid-class meter). */
    public static final double LIGHT_SHARE = 0.10;

    /** Of a hand-held thermometer: 1 °C (common practice, no source). */
    public static final double TEMPERATURE_CELSIUS = 1;

    public MeterUncertainty {
        Check.within("share", share, 0, Math.nextDown(1.0), "");
        Check.within("absolute uncertainty", absolute, 0, Double.MAX_VALUE, "");
        Check.within("resolution", resolution, Double.MIN_NORMAL, Double.MAX_VALUE, "");
    }

    public MeterUncertainty(double share, double resolution) {
        this(share, 0, resolution);
    }

    /** Of a UV index meter. */
    public static MeterUncertainty ofResolution(double resolution) {
        return of(Quantity.UV_INDEX, resolution);
    }

    /** What is assumed of a hand-held meter of a quantity; ultraviolet bands as the UV index (from memory). */
    public static MeterUncertainty of(Quantity quantity, double resolution) {
        return switch (quantity) {
            case UV_INDEX, UVA, UVB_IRRADIANCE -> new MeterUncertainty(DEFAULT_SHARE, resolution);
            case ILLUMINANCE, IRRADIANCE, IR_A, IR_B -> new MeterUncertainty(LIGHT_SHARE, resolution);
            case SURFACE_TEMPERATURE, AIR_TEMPERATURE -> new MeterUncertainty(0, TEMPERATURE_CELSIUS, resolution);
        };
    }

    /** Expanded uncertainty U of an amount, in its unit. */
    public double expanded(double amount) {
        return Math.hypot(share * amount, floor());
    }

    /** The amount from y − U to y + U, cut off at 0. */
    public MeasuredAmount around(double amount) {
        Check.notNegative("amount", amount, "");
        double expanded = expanded(amount);
        return new MeasuredAmount(amount, new Interval(Math.max(0, amount - expanded), amount + expanded));
    }

    /** The same for any quantity; a temperature's interval may reach below 0. */
    public MeasuredAmount around(Quantity quantity, double amount) {
        if (!quantity.mayBeNegative()) {
            return around(amount);
        }
        double expanded = expanded(amount);
        return new MeasuredAmount(amount, new Interval(amount - expanded, amount + expanded));
    }

    /**
     * Whether no amount at all could have its whole interval inside the band: the band is finer than the meter. The
     * smallest amount whose interval clears the low limit solves y − U(y) = low; it must clear the high limit too.
     */
    public boolean isCoarserThan(Band band) {
        double smallest = band.hasLow() ? smallestClearOf(band.low()) : 0;
        return smallest + expanded(smallest) > band.high();
    }

    private double smallestClearOf(double low) {
        double rest = 1 - share * share;
        double root = Math.sqrt(low * low - rest * (low * low - floor() * floor()));
        return (low + root) / rest;
    }

    private double floor() {
        return Math.hypot(absolute, 2 * resolution / Math.sqrt(12));
    }
}
