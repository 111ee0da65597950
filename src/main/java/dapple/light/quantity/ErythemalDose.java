package dapple.light.quantity;

import java.time.Duration;

/**
 * Erythemal irradiance [isocie17166] summed over time.
 *
 * @param joulesPerSquareMetre at least 0, finite
 */
public record ErythemalDose(double joulesPerSquareMetre) {
    /** One standard erythema dose: 100 J/m² [isocie17166]. */
    public static final double JOULES_PER_SQUARE_METRE_PER_SED = 100;

    /** One hour at UV index 1: 1/40 W/m² [who2002] × 3600 s = 90 J/m². */
    public static final double JOULES_PER_SQUARE_METRE_PER_UVI_HOUR = 3600 / UvIndex.PER_WATT_PER_SQUARE_METRE;

    public static final ErythemalDose NONE = new ErythemalDose(0);

    private static final double NANOSECONDS_PER_SECOND = 1e9;

    public ErythemalDose {
        Check.notNegative("erythemal dose", joulesPerSquareMetre, "J/m²");
    }

    /**
     * What a steady UV index gives: H = UVI / (40 m²/W) · t [who2002].
     *
     * @param time at least 0
     */
    public static ErythemalDose of(UvIndex index, Duration time) {
        double seconds = time.getSeconds() + time.getNano() / NANOSECONDS_PER_SECOND;
        return new ErythemalDose(index.irradiance().wattsPerSquareMetre() * seconds);
    }

    public ErythemalDose plus(ErythemalDose other) {
        return new ErythemalDose(joulesPerSquareMetre + other.joulesPerSquareMetre);
    }

    /** Standard erythema doses. */
    public double sed() {
        return joulesPerSquareMetre / JOULES_PER_SQUARE_METRE_PER_SED;
    }

    /** Hours at UV index 1. */
    public double uviHours() {
        return joulesPerSquareMetre / JOULES_PER_SQUARE_METRE_PER_UVI_HOUR;
    }
}
