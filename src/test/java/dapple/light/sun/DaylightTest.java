package dapple.light.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.LocalDate;
import java.time.Year;
import java.time.ZoneOffset;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import net.e175.klaus.solarpositioning.SPA;
import net.e175.klaus.solarpositioning.SunriseResult;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class DaylightTest {
    /**
     * Two days' change at 60° of latitude: which day is the middle of a month, and by which formula for the sun's way, the
     * table does not say. The minutes are tested by the long algorithm.
     */
    private static final double TABLE_HOURS = 0.2;

    private static final double SOLSTICE_HOURS = 0.05;

    private static final double MINUTE_HOURS = 1.0 / 60;
    private static final double ROUNDING = 1e-9;

    @ParameterizedTest
    @CsvFileSource(resources = "day-length-published.csv", useHeadersInDisplayName = true)
    void isThatOfATableInTheMiddleOfEachMonth(double latitudeDegrees, int month, double hours) {
        assertThat(Daylight.on(LocalDate.of(2026, month, 15), latitudeDegrees).hours())
                .isCloseTo(hours, within(TABLE_HOURS));
    }

    /** 52° N: 16.73 h on 21 June and 7.74 h on 21 December, by the usual model, from another program. */
    @ParameterizedTest
    @CsvSource({"2026-06-21, 16.73", "2026-12-21, 7.74"})
    void isThatOfAnotherProgramAtTheSolstices(LocalDate day, double hours) {
        assertThat(Daylight.on(day, 52).hours()).isCloseTo(hours, within(SOLSTICE_HOURS));
    }

    static Stream<Arguments> daysAndLatitudes() {
        return IntStream.rangeClosed(-4, 4)
                .boxed()
                .flatMap(step -> IntStream.iterate(3, day -> day < 365, day -> day + 33)
                        .mapToObj(day -> Arguments.of(LocalDate.ofYearDay(2026, day), step * 15.0)));
    }

    /** Sunrise and sunset of the long algorithm [reda2004], as its library finds them. */
    @ParameterizedTest
    @MethodSource("daysAndLatitudes")
    void agreesWithTheLongAlgorithmWithinAMinute(LocalDate day, double latitudeDegrees) {
        SunriseResult.RegularDay found = (SunriseResult.RegularDay)
                SPA.calculateSunriseTransitSet(day.atTime(12, 0).atZone(ZoneOffset.UTC), latitudeDegrees, 0, 69);
        double hours = Duration.between(found.sunrise(), found.sunset()).toMillis() / 3.6e6;
        assertThat(Daylight.on(day, latitudeDegrees).hours()).isCloseTo(hours, within(1.2 * MINUTE_HOURS));
    }

    @ParameterizedTest
    @CsvSource({"70, 2026-06-21", "-70, 2026-12-21", "90, 2026-05-01", "-90, 2026-12-21"})
    void doesNotEndInAPolarSummer(double latitudeDegrees, LocalDate day) {
        assertThat(Daylight.on(day, latitudeDegrees)).isEqualTo(new Daylight.PolarDay());
    }

    @ParameterizedTest
    @CsvSource({"70, 2026-12-21", "-70, 2026-06-21", "90, 2026-12-01", "-90, 2026-06-21"})
    void doesNotBeginInAPolarWinter(double latitudeDegrees, LocalDate day) {
        assertThat(Daylight.on(day, latitudeDegrees)).isEqualTo(new Daylight.PolarNight());
    }

    /** The same with both signs turned. */
    @ParameterizedTest
    @MethodSource("daysAndLatitudes")
    void isThatOfTheOtherHemisphereWithTheSeasonTurned(LocalDate day, double latitudeDegrees) {
        double declination = Declination.degrees(day);
        assertThat(Daylight.of(declination, latitudeDegrees).hours())
                .isCloseTo(Daylight.of(-declination, -latitudeDegrees).hours(), within(ROUNDING));
    }

    /** Summer and winter together are a little over 24 h, for the sun has a width and air bends its light. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 15, 30, 45, 60})
    void isLongerInSummerByWhatItIsShorterInWinter(double latitudeDegrees) {
        double sum = Daylight.of(20, latitudeDegrees).hours()
                + Daylight.of(-20, latitudeDegrees).hours();
        assertThat(sum).isBetween(24.1, 24.7);
    }

    @Test
    void growsTowardsThePoleInSummer() {
        assertThat(IntStream.rangeClosed(0, 66)
                        .mapToDouble(latitude -> Daylight.of(23, latitude).hours())
                        .toArray())
                .isSorted();
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, 90.1, -91, Double.POSITIVE_INFINITY})
    void isNotAskedBeyondThePoles(double latitudeDegrees) {
        assertThatThrownBy(() -> Daylight.on(LocalDate.of(2026, 1, 1), latitudeDegrees))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** In the middle of a month the day is near the month's mean, as the same table has it. */
    @ParameterizedTest
    @CsvSource({"40, 1, 9.62", "40, 6, 14.96", "-35, 12, 14.44", "0, 3, 12.11"})
    void ofAMonthIsNearThatOfItsMiddle(double latitudeDegrees, int month, double hours) {
        assertThat(new HomeDays(latitudeDegrees).hoursByMonth(Year.of(2026)).get(month - 1))
                .isCloseTo(hours, within(0.15));
    }

    @Test
    void ofMonthsIsTwelve() {
        assertThat(new HomeDays(25).hoursByMonth(Year.of(2024)))
                .hasSize(12)
                .allMatch(hours -> hours > 10 && hours < 14);
    }

    /** A month of 28 nights without sun, and one with some days: worked by counting. */
    @Test
    void ofAPolarMonthCountsItsNights() {
        assertThat(new HomeDays(80).hoursByMonth(Year.of(2026)).get(11)).isZero();
        assertThat(new HomeDays(80).hoursByMonth(Year.of(2026)).get(5)).isEqualTo(24);
    }
}
