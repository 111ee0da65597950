package dapple.light.sun;

import dapple.light.quantity.Check;

/**
 * A place on the earth.
 *
 * @param latitudeDegrees −90 to 90, north positive
 * @param longitudeDegrees −180 to 180, east positive
 * @param altitudeMetres above the sea, −500 to 9000
 */
public record EarthPlace(double latitudeDegrees, double longitudeDegrees, double altitudeMetres) {
    public EarthPlace {
        Check.within("latitude", latitudeDegrees, -90, 90, "°");
        Check.within("longitude", longitudeDegrees, -180, 180, "°");
        Check.within("altitude", altitudeMetres, -500, 9000, "m");
    }
}
