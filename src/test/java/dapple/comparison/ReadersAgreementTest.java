package dapple.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dapple.light.quantity.Quantity;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Three pairs by hand: 0.3/3.15 = 9.52 %, 0.6/2.3 = 26.1 %, and 0.1 of 0.25, one step of the display, 40 %. */
class ReadersAgreementTest {
    private static final Instant NOW = Instant.parse("2026-03-02T09:00:00Z");

    @Test
    void theMiddleOfTheSpreadsIsTold() {
        assertThat(agreement(pair(3.0, 3.3), pair(2.0, 2.6), pair(0.2, 0.3))
                        .spread()
                        .orElseThrow())
                .isCloseTo(0.6 / 2.3, within(1e-9));
    }

    @Test
    void ofTwoItLiesBetweenThem() {
        assertThat(agreement(pair(3.0, 3.3), pair(2.0, 2.6)).spread().orElseThrow())
                .isCloseTo((0.3 / 3.15 + 0.6 / 2.3) / 2, within(1e-9));
    }

    @Test
    void oneStepOfTheDisplayIsNeverTooMuch() {
        assertThat(agreement(pair(3.0, 3.3), pair(2.0, 2.6), pair(0.2, 0.3)).within())
                .isEqualTo(2);
    }

    @Test
    void whatIsPastItsTimeWasAskedForAndNotDone() {
        ReadersAgreement both = agreement(pair(3.0, 3.3), unanswered(Duration.ofHours(25)));
        assertThat(List.of(both.asked(), both.done())).containsExactly(2, 1);
    }

    @Test
    void whatStillWaitsIsNotCounted() {
        assertThat(ReadersAgreement.of(List.of(unanswered(Duration.ofHours(23))), NOW))
                .isEmpty();
    }

    @Test
    void whatTwoMetersDifferBySaysNothingOfPeople() {
        RepeatAsked otherMeter = new RepeatAsked(
                "E1 P1", Quantity.UV_INDEX, 0.1, read(3.0, 1), Optional.of(new RepeatAsked.Read(4.5, 2, 2, NOW)));
        ReadersAgreement one = agreement(otherMeter);
        assertThat(List.of(one.done(), one.byOneMeter())).containsExactly(1, 0);
        assertThat(one.spread()).isEmpty();
    }

    private static ReadersAgreement agreement(RepeatAsked... repeats) {
        return ReadersAgreement.of(List.of(repeats), NOW).get(0);
    }

    private static RepeatAsked pair(double first, double second) {
        return new RepeatAsked("E1 P1", Quantity.UV_INDEX, 0.1, read(first, 1), Optional.of(read(second, 2)));
    }

    private static RepeatAsked unanswered(Duration ago) {
        RepeatAsked.Read first = new RepeatAsked.Read(3.0, 1, 1, NOW.minus(ago));
        return new RepeatAsked("E1 P1", Quantity.UV_INDEX, 0.1, first, Optional.empty());
    }

    private static RepeatAsked.Read read(double amount, long person) {
        return new RepeatAsked.Read(amount, 1, person, NOW);
    }
}
