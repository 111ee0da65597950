package dapple.round;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * When summer time begins and ends: the last Sundays of March and October at 01:00 UTC, Directive 2000/84/EC, articles 2
 * and 3, from memory; the United Kingdom keeps to it.
 */
class SiteDayTest {
    private static final ZoneId LONDON = ZoneId.of("Europe/London");

    @ParameterizedTest
    @CsvSource({"2026-03-28, 24", "2026-03-29, 23", "2026-03-30, 24", "2026-10-24, 24", "2026-10-25, 25"})
    void aDayIsAsLongAsItsClocksSay(LocalDate day, long hours) {
        SiteDay site = new SiteDay(Instant.parse("2026-11-26T12:00:00Z"), LONDON);
        Duration length = Duration.between(site.startOf(day), site.startOf(day.plusDays(1)));
        assertThat(length).isEqualTo(Duration.ofHours(hours));
    }

    @ParameterizedTest
    @CsvSource({
        "2026-06-30T22:59:59Z, 2026-06-30",
        "2026-06-30T23:00:00Z, 2026-07-01",
        "2026-11-26T23:59:59Z, 2026-11-26"
    })
    void theDayChangesAtTheSitesMidnight(Instant now, LocalDate today) {
        assertThat(new SiteDay(now, LONDON).today()).isEqualTo(today);
    }

    @ParameterizedTest
    @CsvSource({"2026-10-25T22:00:00Z, 2026-10-25T22:00:00Z", "2026-10-26T09:00:00Z, 2026-10-26T00:00:00Z"})
    void aWalkCountsFromItsDayOrItsEarlierBeginning(Instant begun, Instant start) {
        SiteDay site = new SiteDay(Instant.parse("2026-11-26T12:00:00Z"), LONDON);
        WalkSaid said = new WalkSaid(1, Optional.empty(), Optional.of(new Begun(begun, 1)), Optional.empty());
        assertThat(PlanRows.start(LocalDate.of(2026, 10, 26), said, site)).isEqualTo(start);
    }
}
