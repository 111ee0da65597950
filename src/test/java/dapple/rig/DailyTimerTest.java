package dapple.rig;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Days of 23 and 25 hours are those of the European summer time: Directive 2000/84/EC, last Sundays of March and October. */
class DailyTimerTest {
    private static final ZoneId LONDON = ZoneId.of("Europe/London");

    @ParameterizedTest
    @CsvSource({
        "2026-06-10, 08:00, 18:00, 10",
        "2026-06-10, 20:00, 06:00, 10",
        "2026-06-10, 00:00, 00:00, 24",
        "2026-03-29, 00:00, 00:00, 23",
        "2026-10-25, 00:00, 00:00, 25",
        "2026-03-29, 00:30, 12:30, 11",
        "2026-10-25, 00:30, 12:30, 13",
        "2026-03-29, 08:00, 18:00, 10"
    })
    void aDayCountsTheHoursThatItHas(LocalDate day, LocalTime on, LocalTime off, int hours) {
        Instant from = day.atStartOfDay(LONDON).toInstant();
        Instant to = day.plusDays(1).atStartOfDay(LONDON).toInstant();
        assertThat(new DailyTimer(on, off).onWithin(from, to, LONDON)).isEqualTo(Duration.ofHours(hours));
    }

    @Test
    void aNightOverWhichClocksGoForwardIsAnHourShorter() {
        DailyTimer night = new DailyTimer(LocalTime.of(22, 0), LocalTime.of(6, 0));
        Instant from = LocalDate.of(2026, 3, 28).atTime(12, 0).atZone(LONDON).toInstant();
        Instant to = LocalDate.of(2026, 3, 29).atTime(12, 0).atZone(LONDON).toInstant();
        assertThat(night.onWithin(from, to, LONDON)).isEqualTo(Duration.ofHours(7));
    }

    @Test
    void aYearOfTwelveHoursIsHalfOfIt() {
        DailyTimer half = new DailyTimer(LocalTime.of(7, 0), LocalTime.of(19, 0));
        Instant from = LocalDate.of(2025, 1, 1).atStartOfDay(LONDON).toInstant();
        Instant to = LocalDate.of(2026, 1, 1).atStartOfDay(LONDON).toInstant();
        assertThat(half.onWithin(from, to, LONDON)).isEqualTo(Duration.ofHours(365 * 12));
    }

    @Test
    void whatBeginsWhileItIsOnCountsFromThere() {
        DailyTimer day = new DailyTimer(LocalTime.of(8, 0), LocalTime.of(18, 0));
        Instant from = Instant.parse("2026-01-10T15:30:00Z");
        assertThat(day.onWithin(from, Instant.parse("2026-01-10T17:00:00Z"), LONDON))
                .isEqualTo(Duration.ofMinutes(90));
    }
}
