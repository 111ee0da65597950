package dapple.light.expectation;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.light.expectation.Plausibility.Direction;
import dapple.light.expectation.Plausibility.Likely;
import dapple.light.expectation.Plausibility.Surroundings;
import dapple.light.expectation.Plausibility.Unlikely;
import dapple.light.quantity.Interval;
import dapple.light.quantity.Quantity;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** The same table holds for the script of the page without signal. */
class PlausibilityTest {
    @ParameterizedTest
    @CsvFileSource(resources = "slips-cases.csv", useHeadersInDisplayName = true)
    void namesTheLikeliestSlips(
            Quantity quantity,
            double amount,
            double expectedLow,
            double expectedHigh,
            @Nullable String otherPoints,
            @Nullable String otherQuantities,
            boolean cold,
            @Nullable Direction direction,
            @Nullable String slips) {
        Plausibility found = Plausibility.of(
                quantity,
                amount,
                new Interval(expectedLow, expectedHigh),
                new Surroundings(ranges(otherPoints), ranges(otherQuantities), cold));
        assertThat(found).isEqualTo(direction == null ? new Likely() : new Unlikely(direction, slips(slips)));
    }

    @Test
    void neverNamesMoreThanThree() {
        List<Interval> here = List.of(new Interval(0, 1));
        Plausibility found =
                Plausibility.of(Quantity.UV_INDEX, 0.31, new Interval(2.2, 4.4), new Surroundings(here, here, true));
        assertThat(((Unlikely) found).slips()).containsExactly(Slip.NOT_WARM, Slip.WRONG_QUANTITY, Slip.POINT_MISSED);
    }

    private static List<Interval> ranges(@Nullable String text) {
        return text == null
                ? List.of()
                : Arrays.stream(text.split(";", -1))
                        .map(PlausibilityTest::range)
                        .toList();
    }

    private static Interval range(String text) {
        int colon = text.indexOf(':');
        return new Interval(
                Double.parseDouble(text.substring(0, colon)), Double.parseDouble(text.substring(colon + 1)));
    }

    private static List<Slip> slips(@Nullable String text) {
        return text == null
                ? List.of()
                : Arrays.stream(text.split(" ", -1)).map(Slip::valueOf).toList();
    }
}
