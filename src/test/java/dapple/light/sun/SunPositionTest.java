package dapple.light.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SunPositionTest {
    /** Half a unit of the fifth decimal. */
    private static final double FIVE_DECIMALS = 5e-6;

    /** The station's table has two decimals and the time of a whole minute, in which the sun moves by 0.25°; its place is
     * from memory to a hundredth of a degree. */
    private static final double STATION_DEGREES = 0.15;

    /** Seconds by which clocks on the earth's rotation lagged in 2003: 67 in the example, not the 64.5 of tables. */
    private static final double DELTA_T_SECONDS = 67;

    private static final EarthPlace EXAMPLE = new EarthPlace(39.742476, -105.1786, 1830.14);

    /**
     * The worked example of NREL/TP-560-34302 (Reda, Andreas 2004): 17 October 2003, 12:30:30 at UTC−7, 820 hPa, 11 °C; zenith
     * 50.11162°, azimuth 194.34024°. The values are from memory.
     */
    @Test
    void isThatOfTheWorkedExample() {
        SunPosition sun = SunPosition.at(
                ZonedDateTime.parse("2003-10-17T12:30:30-07:00"), EXAMPLE, new Air(820, 11), DELTA_T_SECONDS);
        assertThat(sun.elevationDegrees()).isCloseTo(90 - 50.11162, within(FIVE_DECIMALS));
        assertThat(sun.azimuthDegrees()).isCloseTo(194.34024, within(FIVE_DECIMALS));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "clear-sky-measured.csv", useHeadersInDisplayName = true)
    void isWhereAStationHasIt(Instant time, double zenithDegrees) {
        SunPosition sun = SunPosition.at(time, new EarthPlace(40.72, -77.93, 376), new Air(970, 0));
        assertThat(90 - sun.elevationDegrees()).isCloseTo(zenithDegrees, within(STATION_DEGREES));
    }

    /** By definition: overhead at the equator at the equinox of 20 March 2024, within the half degree of its hour. */
    @Test
    void isOverheadAtTheEquatorAtAnEquinox() {
        SunPosition sun = SunPosition.at(Instant.parse("2024-03-20T12:07:30Z"), new EarthPlace(0, 0, 0), Air.STANDARD);
        assertThat(sun.elevationDegrees()).isGreaterThan(89.5);
    }

    /** The short form that days are computed from, against the long one: at the pole the elevation is the declination. */
    @ParameterizedTest
    @ValueSource(ints = {1, 40, 80, 110, 150, 172, 200, 240, 266, 300, 335, 355})
    void hasTheDeclinationOfTheShortForm(int dayOfYear) {
        LocalDate day = LocalDate.ofYearDay(2026, dayOfYear);
        SunPosition atPole =
                SunPosition.at(Instant.parse(day + "T12:00:00Z"), new EarthPlace(90, 0, 0), new Air(0, 15));
        assertThat(atPole.elevationDegrees()).isCloseTo(Declination.degrees(day), within(0.015));
    }

    @ParameterizedTest
    @CsvSource({"NaN, 0, 0", "91, 0, 0", "0, 181, 0", "0, -Infinity, 0", "0, 0, 9001"})
    void isNotAskedAtNoPlace(double latitude, double longitude, double altitude) {
        assertThatThrownBy(() -> new EarthPlace(latitude, longitude, altitude))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @CsvSource({"-1, 0", "NaN, 0", "1000, Infinity", "1000, -91"})
    void isNotAskedThroughNoAir(double pressure, double temperature) {
        assertThatThrownBy(() -> new Air(pressure, temperature)).isInstanceOf(IllegalArgumentException.class);
    }
}
