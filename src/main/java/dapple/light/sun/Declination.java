package dapple.light.sun;

import java.time.LocalDate;
import java.time.temporal.JulianFields;

/**
 * The sun's declination at noon in Greenwich, by the short form of [meeus1998], within 0.01° for the years 1950 to 2050:
 * mean longitude L and anomaly M, equation of the centre, aberration and nutation to the largest term, then sin δ =
 * sin ε · sin λ.
 */
final class Declination {
    /** Julian day of noon on 1 January 2000. */
    private static final double EPOCH = 2_451_545;

    private static final double DAYS_PER_CENTURY = 36_525;

    private Declination() {}

    static double degrees(LocalDate day) {
        double centuries = (day.getLong(JulianFields.JULIAN_DAY) - EPOCH) / DAYS_PER_CENTURY;
        double node = Math.toRadians(125.04 - 1934.136 * centuries);
        double longitude = meanLongitude(centuries) + ofCentre(centuries) - 0.00569 - 0.00478 * Math.sin(node);
        double obliquity = 23.439291 - 0.0130042 * centuries + 0.00256 * Math.cos(node);
        return Math.toDegrees(Math.asin(Math.sin(Math.toRadians(obliquity)) * Math.sin(Math.toRadians(longitude))));
    }

    private static double meanLongitude(double t) {
        return 280.46646 + t * (36_000.76983 + t * 0.0003032);
    }

    /** How far the earth's uneven way brings the sun from its mean longitude, °. */
    private static double ofCentre(double t) {
        double anomaly = Math.toRadians(357.52911 + t * (35_999.05029 - t * 0.0001537));
        return (1.914602 - t * (0.004817 + t * 0.000014)) * Math.sin(anomaly)
                + (0.019993 - 0.000101 * t) * Math.sin(2 * anomaly)
                + 0.000289 * Math.sin(3 * anomaly);
    }
}
