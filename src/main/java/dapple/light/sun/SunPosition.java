package dapple.light.sun;

import java.time.Instant;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import net.e175.klaus.solarpositioning.DeltaT;
import net.e175.klaus.solarpositioning.SPA;
import net.e175.klaus.solarpositioning.SolarPosition;

/**
 * Where the sun's centre is seen, through air. By the algorithm of [reda2004], which claims 0.0003° for the years −2000
 * to 6000; what the air does near the horizon is uncertain by some tenths of a degree.
 *
 * @param elevationDegrees over the horizon, −90 to 90
 * @param azimuthDegrees from north by east, 0 to 360
 */
public record SunPosition(double elevationDegrees, double azimuthDegrees) {
    private static final double RIGHT_ANGLE = 90;

    /** Where it is seen from a place. */
    public static SunPosition at(Instant instant, EarthPlace place, Air air) {
        ZonedDateTime utc = instant.atZone(ZoneOffset.UTC);
        return at(utc, place, air, DeltaT.estimate(utc.toLocalDate()));
    }

    /**
     * The same.
     *
     * @param deltaTSeconds terrestrial less universal time
     */
    static SunPosition at(ZonedDateTime time, EarthPlace place, Air air, double deltaTSeconds) {
        SolarPosition found = SPA.calculateSolarPosition(
                time,
                place.latitudeDegrees(),
                place.longitudeDegrees(),
                place.altitudeMetres(),
                deltaTSeconds,
                air.pressureHectopascals(),
                air.temperatureCelsius());
        return new SunPosition(RIGHT_ANGLE - found.zenithAngle(), found.azimuth());
    }
}
