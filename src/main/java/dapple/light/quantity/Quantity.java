package dapple.light.quantity;

/** What is measured, each with the unit of every amount of it. */
public enum Quantity {
    /** UV index, dimensionless: erythemal irradiance × 40 m²/W [who2002]. */
    UV_INDEX("UVI"),
    /** Luminous flux per area, for human eyes. */
    ILLUMINANCE("lx"),
    /** Irradiance 315 to 400 nm. */
    UVA("W/m²"),
    /** Irradiance 780 to 1400 nm. */
    IR_A("W/m²"),
    /** Irradiance 1400 to 3000 nm. */
    IR_B("W/m²"),
    /** What a broadband meter reads; its band is named by the site. */
    IRRADIANCE("W/m²");

    private final String unit;

    Quantity(String unit) {
        this.unit = unit;
    }

    /** The unit as printed beside an amount. */
    public String unit() {
        return unit;
    }
}
