package dapple.light.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ClearSkyTest {
    /** Half a unit of the second decimal. */
    private static final double TWO_DECIMALS = 0.005 + 1e-9;

    /** What Simpson's rule leaves where the integrand ends as a power of 2.42. */
    private static final double OF_THE_SUM = 1e-6;

    @ParameterizedTest
    @CsvFileSource(resources = "clear-sky-published.csv", useHeadersInDisplayName = true)
    void isTheFormula(double elevationDegrees, double ozoneDobsonUnits, double uvIndex) {
        assertThat(new ClearSky(ozoneDobsonUnits).at(elevationDegrees).index())
                .isCloseTo(uvIndex, within(TWO_DECIMALS));
    }

    /** 12.5 overhead at 300 Dobson units, and 1.754 at a zenith of 63.63°: worked by hand from the formula. */
    @ParameterizedTest
    @CsvSource({"90, 12.5", "26.37, 1.754"})
    void isWorkedByHand(double elevationDegrees, double uvIndex) {
        assertThat(ClearSky.USUAL.at(elevationDegrees).index()).isCloseTo(uvIndex, within(0.001));
    }

    /**
     * A station's readings about noon of a mostly clear day of winter [surfrad2017]: 7 to 12 % less, the ozone and haze of the
     * day not being known.
     */
    @ParameterizedTest
    @CsvFileSource(resources = "clear-sky-measured.csv", useHeadersInDisplayName = true)
    void isNearWhatAStationMeasured(String time, double zenithDegrees, double uvIndex) {
        if (zenithDegrees < 68) {
            assertThat(ClearSky.USUAL.at(90 - zenithDegrees).index()).as(time).isCloseTo(uvIndex, withPercentage(13));
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -0.1, -90})
    void isNothingAtNight(double elevationDegrees) {
        assertThat(ClearSky.USUAL.at(elevationDegrees).index()).isZero();
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, 0, 99, 601, Double.POSITIVE_INFINITY})
    void isNotAskedUnderNoSuchOzone(double ozoneDobsonUnits) {
        assertThatThrownBy(() -> new ClearSky(ozoneDobsonUnits)).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, 90.1, -91})
    void isNotAskedAtNoElevation(double elevationDegrees) {
        assertThatThrownBy(() -> ClearSky.USUAL.at(elevationDegrees)).isInstanceOf(IllegalArgumentException.class);
    }

    /**
     * At the equator with the sun in its plane µ = cos H, so that the day is 12.5 · √π · Γ(1.71)/Γ(2.21) · 12 h/π =
     * 69.558540 UVI·h; the functions of a half more, by another program.
     */
    @Test
    void ofADayAddsUpAsItsClosedForm() {
        assertThat(new ClearDay(0, 0, ClearSky.USUAL).uviHours())
                .isCloseTo(69.5585399406456, withPercentage(100 * OF_THE_SUM));
    }

    /** At the pole the sun keeps its height: 24 h of one UV index. */
    @Test
    void ofAPolarDayIsThatOfOneHeight() {
        ClearDay day = new ClearDay(23, 90, ClearSky.USUAL);
        assertThat(day.uviHours()).isCloseTo(24 * ClearSky.USUAL.at(23).index(), withPercentage(1e-6));
    }

    @Test
    void ofAPolarNightIsNothing() {
        assertThat(ClearDay.on(LocalDate.of(2026, 12, 21), 80, ClearSky.USUAL).uviHours())
                .isZero();
    }

    @Test
    void ofADayIsHighestAtNoon() {
        ClearDay day = ClearDay.on(LocalDate.of(2026, 6, 21), 40, ClearSky.USUAL);
        assertThat(day.peak().index()).isGreaterThan(day.at(1).index());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.5, 3, 6.5, 11})
    void ofADayIsTheSameBeforeAndAfterNoon(double hours) {
        ClearDay day = ClearDay.on(LocalDate.of(2026, 5, 1), 30, ClearSky.USUAL);
        assertThat(day.at(-hours).index()).isCloseTo(day.at(hours).index(), within(1e-12));
    }

    /** The peak is that of the sun's height at noon, 90° − |φ − δ|. */
    @ParameterizedTest
    @CsvSource({"20, 10, 80", "-35, 23, 32", "50, -23, 17"})
    void ofADayPeaksAsTheNoonSunStands(double latitude, double declination, double elevation) {
        assertThat(new ClearDay(declination, latitude, ClearSky.USUAL).peak().index())
                .isCloseTo(ClearSky.USUAL.at(elevation).index(), within(1e-9));
    }

    @Test
    void fallsWithMoreOzone() {
        assertThat(new ClearSky(400).at(60).index())
                .isLessThan(new ClearSky(300).at(60).index());
    }

    @ParameterizedTest
    @CsvSource({"24, 0", "NaN, 0", "0, 91", "0, NaN"})
    void ofADayIsNotAskedWhereNoneIs(double declination, double latitude) {
        assertThatThrownBy(() -> new ClearDay(declination, latitude, ClearSky.USUAL))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @ValueSource(doubles = {12.1, -13, Double.NaN})
    void ofADayIsNotAskedBeyondIt(double hours) {
        ClearDay day = new ClearDay(0, 0, ClearSky.USUAL);
        assertThatThrownBy(() -> day.at(hours)).isInstanceOf(IllegalArgumentException.class);
    }
}
