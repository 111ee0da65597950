package dapple.light.quantity;

/**
 * UV index, dimensionless: erythemal irradiance × 40 m²/W [who2002].
 *
 * @param index at least 0, finite
 */
public record UvIndex(double index) {
    /** UV index per erythemal irradiance: 40 m²/W [who2002]. */
    public static final double PER_WATT_PER_SQUARE_METRE = 40;

    public UvIndex {
        Check.notNegative("UV index", index, "");
    }

    public static UvIndex of(ErythemalIrradiance irradiance) {
        return new UvIndex(PER_WATT_PER_SQUARE_METRE * irradiance.wattsPerSquareMetre());
    }

    public ErythemalIrradiance irradiance() {
        return new ErythemalIrradiance(index / PER_WATT_PER_SQUARE_METRE);
    }
}
