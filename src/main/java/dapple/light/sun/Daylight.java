package dapple.light.sun;

import dapple.light.quantity.Check;
import java.time.LocalDate;

/**
 * How long the sun is up on a day: its upper edge over a level horizon, through usual air, so that its centre stands at
 * −0.8333° when it rises [meeus1998]. cos H = (sin(−0.8333°) − sin φ sin δ)/(cos φ cos δ); 2H/15° hours. With the
 * declination δ of noon, which is a minute off at most to 60° of latitude; nearer to the pole, on the days before a polar day
 * or night, it may be many minutes.
 */
public sealed interface Daylight {
    /** Elevation of the centre at sunrise and sunset: half the sun's width and the bending of the air, ° [meeus1998]. */
    double RISING_DEGREES = -0.8333;

    double HOURS_A_DAY = 24;

    /** The sun rises and sets. */
    record Day(double hours) implements Daylight {}

    /** The sun does not set. */
    record PolarDay() implements Daylight {
        @Override
        public double hours() {
            return HOURS_A_DAY;
        }
    }

    /** The sun does not rise. */
    record PolarNight() implements Daylight {
        @Override
        public double hours() {
            return 0;
        }
    }

    /** Hours from sunrise to sunset. */
    double hours();

    /**
     * On a day of the calendar.
     *
     * @param latitudeDegrees −90 to 90, north positive
     */
    static Daylight on(LocalDate day, double latitudeDegrees) {
        return of(Declination.degrees(day), latitudeDegrees);
    }

    static Daylight of(double declinationDegrees, double latitudeDegrees) {
        double latitude = Math.toRadians(Check.within("latitude", latitudeDegrees, -90, 90, "°"));
        double declination = Math.toRadians(declinationDegrees);
        double cosine = (Math.sin(Math.toRadians(RISING_DEGREES)) - Math.sin(latitude) * Math.sin(declination))
                / (Math.cos(latitude) * Math.cos(declination));
        if (cosine >= 1) {
            return new PolarNight();
        }
        return cosine <= -1 ? new PolarDay() : new Day(HOURS_A_DAY * Math.acos(cosine) / Math.PI);
    }
}
