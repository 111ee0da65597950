package dapple.light.sun;

import dapple.light.quantity.Check;

/**
 * Air that bends the sun's light.
 *
 * @param pressureHectopascals yearly mean at the place, 0 to 1100; 0: without air
 * @param temperatureCelsius yearly mean, −90 to 60
 */
public record Air(double pressureHectopascals, double temperatureCelsius) {
    /** At sea level: 1013.25 hPa and 15 °C. */
    public static final Air STANDARD = new Air(1013.25, 15);

    public Air {
        Check.within("pressure", pressureHectopascals, 0, 1100, "hPa");
        Check.within("temperature", temperatureCelsius, -90, 60, "°C");
    }
}
