package dapple.light.sun;

import dapple.light.quantity.Check;
import dapple.light.quantity.UvIndex;
import java.time.LocalDate;

/**
 * The UV index over a day without clouds: that of {@link ClearSky} with µ = sin φ sin δ + cos φ cos δ cos H, H the hour angle,
 * 15° an hour from the sun's noon.
 *
 * @param declinationDegrees δ, −23.5 to 23.5
 * @param latitudeDegrees φ, −90 to 90, north positive
 */
public record ClearDay(double declinationDegrees, double latitudeDegrees, ClearSky sky) {
    /** More than the sun's greatest declination in this age, °. */
    private static final double TROPIC_DEGREES = 23.5;

    private static final double HALF_A_DAY = 12;

    /** Steps from noon to sunset: the sum is then within 1e-6 of closed forms. */
    private static final int STEPS = 400;

    public ClearDay {
        Check.within("declination", declinationDegrees, -TROPIC_DEGREES, TROPIC_DEGREES, "°");
        Check.within("latitude", latitudeDegrees, -90, 90, "°");
    }

    public static ClearDay on(LocalDate day, double latitudeDegrees, ClearSky sky) {
        return new ClearDay(Declination.degrees(day), latitudeDegrees, sky);
    }

    /** The highest, at the sun's noon. */
    public UvIndex peak() {
        return at(0);
    }

    /**
     * At a time of day.
     *
     * @param hoursFromNoon −12 to 12, of the sun's noon
     */
    public UvIndex at(double hoursFromNoon) {
        Check.within("time from noon", hoursFromNoon, -HALF_A_DAY, HALF_A_DAY, "h");
        return new UvIndex(sky.ofSine(sine(Math.PI * hoursFromNoon / HALF_A_DAY)));
    }

    private double sine(double hourAngle) {
        return level() + swing() * Math.cos(hourAngle);
    }

    private double level() {
        return Math.sin(Math.toRadians(latitudeDegrees)) * Math.sin(Math.toRadians(declinationDegrees));
    }

    private double swing() {
        return Math.cos(Math.toRadians(latitudeDegrees)) * Math.cos(Math.toRadians(declinationDegrees));
    }

    /** UVI·h of the whole day: Simpson's rule from noon until the sun's centre sets, twice. */
    public double uviHours() {
        double sunset = Math.acos(Math.max(-1, Math.min(1, -level() / swing())));
        double step = sunset / STEPS;
        double sum = sky.ofSine(sine(0)) + sky.ofSine(sine(sunset));
        for (int index = 1; index < STEPS; index++) {
            sum += (index % 2 == 1 ? 4 : 2) * sky.ofSine(sine(index * step));
        }
        return 2 * sum * step / 3 * HALF_A_DAY / Math.PI;
    }
}
