package dapple.archive;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.site.SiteFacts;
import java.time.Instant;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class YearAskedTest {
    /** UTC+13 in its summer: its year begins when UTC has 11:00 of the day before. */
    private static final SiteFacts SITE = new SiteFacts(7, "Te Awa / Larkmoor", ZoneId.of("Pacific/Auckland"));

    private static final Instant NOW = Instant.parse("2026-11-27T04:00:00Z");

    @Test
    void aYearBeginsAndEndsByTheClockOfTheSite() {
        assertThat(YearAsked.of("2025", SITE, NOW))
                .map(YearAsked::span)
                .contains(new RecordSpan(
                        SITE, Instant.parse("2024-12-31T11:00:00Z"), Instant.parse("2025-12-31T11:00:00Z")));
    }

    @Test
    void theLastMonthsEndNow() {
        assertThat(YearAsked.of("last-12-months", SITE, NOW))
                .map(YearAsked::span)
                .contains(new RecordSpan(SITE, Instant.parse("2025-11-26T11:00:00Z"), NOW));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "2027", "25", "1e3", "-2025", "NaN", "20251", "٢٠٢٥", "2025 "})
    void anythingElseIsNoYear(String typed) {
        assertThat(YearAsked.of(typed, SITE, NOW)).isEmpty();
    }

    @Test
    void theFileIsNamedForSiteAndYear() {
        assertThat(YearAsked.of("2025", SITE, NOW))
                .map(YearAsked::fileName)
                .contains("dapple-te-awa-larkmoor-2025.zip");
    }
}
