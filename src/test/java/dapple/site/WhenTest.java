package dapple.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.springframework.validation.FieldError;
import org.springframework.validation.MapBindingResult;

/** The clocks of London went forward on 29 March 2026 at 01:00 and back on 25 October 2026 at 02:00 [tzdata]. */
class WhenTest {
    private static final ZoneId LONDON = ZoneId.of("Europe/London");
    private static final Instant NOW = Instant.parse("2026-11-26T12:00:00Z");

    private final MapBindingResult errors = new MapBindingResult(Map.of(), "form");

    private Optional<Instant> read(String typed, Occurrence which) {
        return When.until(NOW, LONDON).read("at", LocalDateTime.parse(typed), which, errors);
    }

    private String refusal() {
        FieldError error = errors.getFieldError("at");
        return Optional.ofNullable(error).map(FieldError::getCode).orElse("none");
    }

    @Test
    void readsSummerTime() {
        assertThat(read("2026-07-01T10:30", Occurrence.UNSAID)).contains(Instant.parse("2026-07-01T09:30:00Z"));
    }

    @Test
    void refusesATimeThatTheClocksSkipped() {
        read("2026-03-29T01:30", Occurrence.UNSAID);
        assertThat(refusal()).isEqualTo("when.skipped");
    }

    @Test
    void asksWhichOfTwo() {
        read("2026-10-25T01:30", Occurrence.UNSAID);
        assertThat(refusal()).isEqualTo("when.twice");
    }

    @Test
    void takesTheFirstOfTwo() {
        assertThat(read("2026-10-25T01:30", Occurrence.FIRST)).contains(Instant.parse("2026-10-25T00:30:00Z"));
    }

    @Test
    void takesTheSecondOfTwo() {
        assertThat(read("2026-10-25T01:30", Occurrence.SECOND)).contains(Instant.parse("2026-10-25T01:30:00Z"));
    }

    @Test
    void refusesTheFuture() {
        read("2026-11-26T12:01", Occurrence.UNSAID);
        assertThat(refusal()).isEqualTo("when.future");
    }

    @Test
    void takesTheFutureWhereItMayBe() {
        assertThat(When.ever(LONDON).read("at", LocalDateTime.parse("2027-01-01T00:00"), Occurrence.UNSAID, errors))
                .contains(Instant.parse("2027-01-01T00:00:00Z"));
    }

    @Test
    void refusesAYearThatNobodyMeans() {
        read("0026-11-24T10:30", Occurrence.UNSAID);
        assertThat(refusal()).isEqualTo("when.year");
    }

    @Test
    void asksForATime() {
        When.until(NOW, LONDON).read("at", null, Occurrence.UNSAID, errors);
        assertThat(refusal()).isEqualTo("when.needed");
    }
}
