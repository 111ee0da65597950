package dapple.meter;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CalibrationDueTest {
    private static final LocalDate TODAY = LocalDate.parse("2026-11-26");

    /** Days of the calendar counted by hand: 24 December is 28 days after 26 November. */
    @ParameterizedTest
    @CsvSource({
        "2026-11-25, OVERDUE",
        "2026-11-26, SOON",
        "2026-12-24, SOON",
        "2026-12-25, LATER",
        "2020-01-01, OVERDUE",
        "2199-12-31, LATER"
    })
    void holdsThroughItsLastDayAndIsDueSoonForFourWeeks(LocalDate due, CalibrationDue found) {
        assertThat(CalibrationDue.of(Optional.of(due), TODAY)).isEqualTo(found);
    }

    @Test
    void isUnknownWithoutACalibration() {
        assertThat(CalibrationDue.of(Optional.empty(), TODAY)).isEqualTo(CalibrationDue.NEVER);
    }
}
