package dapple.exposure;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AskedPeriodTest {
    private static final LocalDate LAST = LocalDate.of(2026, 11, 24);
    private static final Period USUAL = new Period(LocalDate.of(2026, 5, 25), LAST);

    @Test
    void whoAsksForNothingSeesSixMonths() {
        assertThat(AskedPeriod.of(null, null, LAST).period()).isEqualTo(USUAL);
    }

    @Test
    void whoAsksForAPeriodSeesIt() {
        assertThat(AskedPeriod.of("2026-03-16", " 2026-03-29", LAST).period())
                .isEqualTo(new Period(LocalDate.of(2026, 3, 16), LocalDate.of(2026, 3, 29)));
    }

    @Test
    void whoAsksForALastDayAloneSeesSixMonthsUntilThen() {
        assertThat(AskedPeriod.of("", "2026-06-30", LAST).period())
                .isEqualTo(new Period(LocalDate.of(2025, 12, 31), LocalDate.of(2026, 6, 30)));
    }

    @Test
    void twoYearsAreNotTooLong() {
        assertThat(AskedPeriod.of("2024-11-25", "2026-11-24", LAST).wrongFrom()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "letters, 2026-03-29, period.day",
        "1e400, 2026-03-29, period.day",
        "NaN, 2026-03-29, period.day",
        "-1, 2026-03-29, period.day",
        "2026-02-30, 2026-03-29, period.day",
        "1949-12-31, 2026-03-29, period.day",
        "-999999999-01-01, 2026-03-29, period.day",
        "2026-03-30, 2026-03-29, period.order",
        "2024-11-24, 2026-11-24, period.long"
    })
    void aWrongFirstDayHasItsMessageAndIsKeptAsTyped(String from, String to, String message) {
        AskedPeriod asked = AskedPeriod.of(from, to, LAST);
        assertThat(asked).isEqualTo(new AskedPeriod(from, to, Optional.of(message), Optional.empty(), USUAL));
    }

    @ParameterizedTest
    @CsvSource({
        "2026-11-25, period.future",
        "+999999999-12-31, period.day",
        "-999999999-01-01, period.day",
        "soon, period.day"
    })
    void aWrongLastDayHasItsMessageAndIsKeptAsTyped(String to, String message) {
        AskedPeriod asked = AskedPeriod.of("2026-03-16", to, LAST);
        assertThat(asked).isEqualTo(new AskedPeriod("2026-03-16", to, Optional.empty(), Optional.of(message), USUAL));
    }
}
