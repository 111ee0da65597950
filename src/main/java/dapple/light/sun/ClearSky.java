package dapple.light.sun;

import dapple.light.quantity.Check;
import dapple.light.quantity.UvIndex;

/**
 * The UV index under a sky without clouds: 12.5 · µ^2.42 · (ozone/300)^−1.23, µ the sine of the sun's elevation
 * [madronich2007]. For clean air at sea level and a ground that reflects little, on a level sensor. Below 20° of elevation
 * it is rough; a place gains 6 to 10 % for each kilometre of height (from memory), snow and sand add, haze takes; the sun is
 * 3.4 % nearer or farther with the season, which is not in it. Clouds and shade take most in the field.
 *
 * @param ozoneDobsonUnits vertical column, 100 to 600
 */
public record ClearSky(double ozoneDobsonUnits) {
    /** UV index with the sun overhead and 300 Dobson units [madronich2007]. */
    private static final double OVERHEAD = 12.5;

    /** Exponent of µ [madronich2007]. */
    private static final double OF_HEIGHT = 2.42;

    /** Exponent of the ozone [madronich2007]. */
    private static final double OF_OZONE = -1.23;

    private static final double REFERENCE_DOBSON_UNITS = 300;

    /** 300 Dobson units, about the mean of the earth (from memory). */
    public static final ClearSky USUAL = new ClearSky(REFERENCE_DOBSON_UNITS);

    public ClearSky {
        Check.within("ozone", ozoneDobsonUnits, 100, 600, "DU");
    }

    /**
     * With the sun at an elevation; 0 where it is not over the horizon.
     *
     * @param elevationDegrees −90 to 90
     */
    public UvIndex at(double elevationDegrees) {
        Check.within("elevation", elevationDegrees, -90, 90, "°");
        return new UvIndex(ofSine(Math.sin(Math.toRadians(elevationDegrees))));
    }

    double ofSine(double sine) {
        return sine > 0
                ? OVERHEAD * Math.pow(sine, OF_HEIGHT) * Math.pow(ozoneDobsonUnits / REFERENCE_DOBSON_UNITS, OF_OZONE)
                : 0;
    }
}
