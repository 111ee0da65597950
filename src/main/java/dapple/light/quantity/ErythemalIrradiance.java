package dapple.light.quantity;

/**
 * Irradiance weighted with the erythema action spectrum [isocie17166].
 *
 * @param wattsPerSquareMetre at least 0, finite
 */
public record ErythemalIrradiance(double wattsPerSquareMetre) {
    public ErythemalIrradiance {
        Check.notNegative("erythemal irradiance", wattsPerSquareMetre, "W/m²");
    }
}
