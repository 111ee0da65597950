package dapple.light.quantity;

import java.util.Arrays;
import java.util.List;

/** What is measured, each with the unit of every amount of it. */
public enum Quantity {
    /** UV index, dimensionless: erythemal irradiance × 40 m²/W [who2002]. */
    UV_INDEX("UVI", 0, 99.9),
    /** Luminous flux per area, for human eyes. */
    ILLUMINANCE("lx", 0, 999_999),
    /** Irradiance 315 to 400 nm. */
    UVA("W/m²", 0, 9_999),
    /** Irradiance 780 to 1400 nm. */
    IR_A("W/m²", 0, 9_999),
    /** Irradiance 1400 to 3000 nm. */
    IR_B("W/m²", 0, 9_999),
    /** What a broadband meter reads; its band is named by the site. */
    IRRADIANCE("W/m²", 0, 9_999),
    /**
     * What an older total-UVB meter reads, unweighted. Its ratio to the UV index differs from lamp to lamp, so that it
     * is never converted to one nor judged by limits for one.
     */
    UVB_IRRADIANCE("µW/cm²", 0, 9_999),
    /** Of what an animal lies on, by infrared thermometer; a proxy for near infrared. */
    SURFACE_TEMPERATURE("°C", -40, 120),
    /** Context: keeping it at a set point is another job. */
    AIR_TEMPERATURE("°C", -40, 120);

    private final String unit;
    private final double lowest;
    private final double highest;

    Quantity(String unit, double lowest, double highest) {
        this.unit = unit;
        this.lowest = lowest;
        this.highest = highest;
    }

    /** The unit as printed beside an amount. */
    public String unit() {
        return unit;
    }

    /** The lowest amount that is taken down from a meter's display. */
    public double lowest() {
        return lowest;
    }

    /** The highest amount that is taken down from a meter's display (our own limit: above it a slip is likelier). */
    public double highest() {
        return highest;
    }

    public boolean mayBeNegative() {
        return lowest < 0;
    }

    public boolean isTemperature() {
        return this == SURFACE_TEMPERATURE || this == AIR_TEMPERATURE;
    }

    /** Whether hand-held meters for it are in use; the two infrared bands are computed alone. */
    public boolean isMeasuredInTheField() {
        return this != IR_A && this != IR_B;
    }

    /** The quantities that hand-held meters show. */
    public static List<Quantity> measuredInTheField() {
        return Arrays.stream(values()).filter(Quantity::isMeasuredInTheField).toList();
    }
}
