package dapple.comparison;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.light.quantity.Quantity;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ProgressTest {
    private static final Instant BEGUN = Instant.parse("2026-03-02T09:00:00Z");

    @ParameterizedTest
    @CsvSource({"0, true", "60, true", "61, false", "1440, false"})
    void aPointCountsWhenBothMetersReadItWithinAnHour(int minutes, boolean counts) {
        Progress progress = of(List.of(1L, 2L), read(1, 0), read(2, minutes));
        assertThat(progress.isComplete()).isEqualTo(counts);
    }

    @Test
    void theOrderOfTheMetersDoesNotMatter() {
        assertThat(of(List.of(1L, 2L), read(2, 0), read(1, 30)).isComplete()).isTrue();
    }

    @Test
    void anyTwoReadingsWithinAnHourAreEnough() {
        assertThat(of(List.of(1L, 2L), read(1, 0), read(2, 200), read(1, 230)).isComplete())
                .isTrue();
    }

    @Test
    void ofThreeMetersEveryTwoHaveToMeet() {
        assertThat(of(List.of(1L, 2L, 3L), read(1, 0), read(2, 40), read(3, 80)).isComplete())
                .isFalse();
    }

    @Test
    void whatIsTooFarApartIsSaid() {
        assertThat(of(List.of(1L, 2L), read(1, 0), read(2, 90)).points().get(0).isTooFarApart())
                .isTrue();
    }

    @Test
    void whatIsNotReadYetIsNotTooFarApart() {
        assertThat(of(List.of(1L, 2L), read(1, 0)).points().get(0).isTooFarApart())
                .isFalse();
    }

    @Test
    void whenEachMeterReadLastIsTold() {
        assertThat(of(List.of(1L, 2L), read(1, 0), read(1, 9)).points().get(0).readAt())
                .containsExactly(Optional.of(BEGUN.plus(Duration.ofMinutes(9))), Optional.empty());
    }

    private static Progress of(List<Long> meters, MeterRead... reads) {
        ComparisonFacts facts = new ComparisonFacts(
                1, 1, Quantity.UV_INDEX, BEGUN, 1, Optional.empty(), Optional.empty(), meters, List.of(7L));
        return Progress.of(facts, List.of(reads));
    }

    private static MeterRead read(long meter, int minutes) {
        return new MeterRead(7, meter, BEGUN.plus(Duration.ofMinutes(minutes)), 2.0);
    }
}
