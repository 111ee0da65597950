package dapple.comparison;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.light.quantity.Quantity;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ComparisonDueTest {
    private static final ZoneId ZONE = ZoneId.of("Europe/London");

    /** Half past midnight of 3 March in London; 13 weeks, 91 days, later by the calendar. */
    private static final Instant NEWEST = Instant.parse("2026-03-03T00:30:00Z");

    @ParameterizedTest
    @CsvSource({"2026-06-01, false", "2026-06-02, true", "2026-07-01, true"})
    void itIsDueAQuarterAfterTheLast(LocalDate day, boolean due) {
        assertThat(of(Optional.of(NEWEST), Optional.empty()).isDueOn(day)).isEqualTo(due);
    }

    @Test
    void whatWasNeverComparedIsDueAtOnce() {
        assertThat(of(Optional.empty(), Optional.empty()).isDueOn(LocalDate.of(2026, 3, 3)))
                .isTrue();
    }

    @Test
    void whatWasBegunStaysToBeDone() {
        assertThat(of(Optional.of(NEWEST), Optional.of(7L)).isDueOn(LocalDate.of(2026, 3, 4)))
                .isTrue();
    }

    private static ComparisonDue of(Optional<Instant> newest, Optional<Long> underWay) {
        return ComparisonDue.of(Quantity.UV_INDEX, newest, underWay, ZONE);
    }
}
