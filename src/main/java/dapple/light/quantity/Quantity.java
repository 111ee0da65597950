package dapple.light.quantity;

/** What is measured, each with the unit of every amount of it. */
public enum Quantity {
    /** UV index, dimensionless: erythemal irradiance × 40 m²/W [who2002]. */
    UV_INDEX("UVI");

    private final String unit;

    Quantity(String unit) {
        this.unit = unit;
    }

    /** The unit as printed beside an amount. */
    public String unit() {
        return unit;
    }
}
