package dapple.importing.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DayTextTest {
    private static final ZoneId LONDON = ZoneId.of("Europe/London");
    private static final Instant NOW = Instant.parse("2026-06-01T12:00:00Z");

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2025-11-13|UNDECIDED",
                "2025/11/13|UNDECIDED",
                "13.11.2025|UNDECIDED",
                "13.11.25|UNDECIDED",
                "13/11/2025|UNDECIDED",
                "11/13/2025|UNDECIDED",
                "13-11-2025|UNDECIDED",
                "13 Nov 2025|UNDECIDED",
                "13. November 2025|UNDECIDED",
                "November 13, 2025|UNDECIDED",
                "13 novembre 2025|UNDECIDED",
                "13 de noviembre de 2025|UNDECIDED"
            })
    void readsTheThirteenthOfNovember(String cell, DayOrder order) {
        assertThat(DayText.read(cell, order).day()).isEqualTo(LocalDate.of(2025, 11, 13));
    }

    @Test
    void readsByTheOrderThatIsSaid() {
        assertThat(DayText.read("03/04/2025", DayOrder.MONTH_FIRST).day()).isEqualTo(LocalDate.of(2025, 3, 4));
    }

    @Test
    void takesADayWithPointsAsDayFirst() {
        assertThat(DayText.read("3.4.2025", DayOrder.MONTH_FIRST).day()).isEqualTo(LocalDate.of(2025, 4, 3));
    }

    @Test
    void asksWhatMayBeReadEitherWay() {
        assertThat(reason("03/04/2025")).isEqualTo(Reason.DAY_AMBIGUOUS);
    }

    @ParameterizedTest
    @ValueSource(strings = {"31/02/2025", "32.1.2025", "2025-13-01", "13/13/2025", "45974", "yesterday", "0.0.0000"})
    void refusesDaysThatAreNone(String cell) {
        assertThat(reason(cell)).isEqualTo(Reason.NOT_A_DAY);
    }

    private static Reason reason(String cell) {
        try {
            DayText.read(cell, DayOrder.UNDECIDED);
            throw new AssertionError("was read: " + cell);
        } catch (BadCellException bad) {
            return bad.reason();
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2025-11-13 14:30|14:30",
                "2025-11-13T14:30:00|14:30",
                "13.11.2025 14.30 Uhr|14:30",
                "13.11.2025, 14h30|14:30",
                "13/11/2025 2:30 pm|14:30",
                "13/11/2025 12:05 am|00:05",
                "13 Nov 2025 2 pm|14:00"
            })
    void readsTheTimeBehindADay(String cell, String expected) {
        assertThat(DayText.read(cell, DayOrder.DAY_FIRST).time().orElseThrow()).hasToString(expected);
    }

    @Test
    void standsAtNoonWhereTheDayAloneIsKnown() {
        assertThat(DayText.read("2025-11-13", DayOrder.DAY_FIRST).instant(LONDON, NOW))
                .isEqualTo("2025-11-13T12:00:00Z");
    }

    @Test
    void takesTheOffsetThatTheSheetGives() {
        assertThat(DayText.read("2025-11-13T14:30:00+02:00", DayOrder.DAY_FIRST).instant(LONDON, NOW))
                .isEqualTo("2025-11-13T12:30:00Z");
    }

    /** The clocks of London went forward on 30 March 2025 at 01:00 and back on 26 October 2025 at 02:00 (IANA time zones). */
    @ParameterizedTest
    @CsvSource({
        "2025-03-30 01:30, TIME_SKIPPED, '30 Mar 2025, 01:30'",
        "2025-10-26 01:30, TIME_TWICE, '26 Oct 2025, 01:30'",
        "2026-06-01 13:01, IN_FUTURE, 1 Jun 2026",
        "1949-12-31, YEAR_IMPOSSIBLE, 31 Dec 1949"
    })
    void refusesTimesThatWereNot(String cell, Reason expected, String said) {
        DayTime written = DayText.read(cell, DayOrder.DAY_FIRST);
        assertThatThrownBy(() -> written.instant(LONDON, NOW)).isInstanceOfSatisfying(BadCellException.class, bad -> {
            assertThat(bad.reason()).isEqualTo(expected);
            assertThat(bad.text()).isEqualTo(said);
        });
    }

    @ParameterizedTest
    @CsvSource({
        "13/11/2025, DAY_FIRST",
        "11/13/2025, MONTH_FIRST",
        "03/04/2025, UNDECIDED",
        "04/04/2025, NOT_ASKED",
        "03.04.2025, NOT_ASKED",
        "2025-04-03, NOT_ASKED"
    })
    void seesInWhichOrderAColumnWritesDays(String cell, DayOrder expected) {
        assertThat(DayText.evidence(cell)).isEqualTo(expected);
    }

    @Test
    void oneDayThatDecidesDecidesTheColumn() {
        assertThat(DayOrder.NOT_ASKED
                        .and(DayOrder.UNDECIDED)
                        .and(DayOrder.MONTH_FIRST)
                        .and(DayOrder.UNDECIDED))
                .isEqualTo(DayOrder.MONTH_FIRST);
    }

    @Test
    void daysThatContradictOneAnotherDecideNothing() {
        assertThat(DayOrder.DAY_FIRST.and(DayOrder.MONTH_FIRST)).isEqualTo(DayOrder.MIXED);
    }
}
