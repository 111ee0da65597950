package dapple.light.metrology;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dapple.light.metrology.RepeatsTaken.Next;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Worked by hand from the rule of 15 % of the middle one (common practice, no source). */
class RepeatsTakenTest {
    /** The same table holds for the script of the page without signal. */
    @ParameterizedTest
    @CsvFileSource(resources = "repeats-worked.csv", useHeadersInDisplayName = true)
    void asksForWhatIsMissing(String amounts, double resolution, Next next, double amount) {
        assertThat(taken(amounts).next(resolution)).isEqualTo(next);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "repeats-worked.csv", useHeadersInDisplayName = true)
    void countsTheMiddleOfTheNewestThree(String amounts, double resolution, Next next, double amount) {
        assertThat(taken(amounts).amount()).isEqualTo(amount);
    }

    @Test
    void keepsTheFirstThreeBesideThoseThatCount() {
        assertThat(taken("1;2;3;4;5;6").sets())
                .containsExactly(new Repeats(List.of(1.0, 2.0, 3.0)), new Repeats(List.of(4.0, 5.0, 6.0)));
    }

    @Test
    void countsNothingTwiceWhereTheSecondThreeAreNotWhole() {
        assertThat(taken("1;2;3;9").counting()).contains(new Repeats(List.of(1.0, 2.0, 3.0)));
    }

    @Test
    void hasNoThreeThatCountBeforeTheThird() {
        assertThat(taken("1;2").counting()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, -0.1, Double.POSITIVE_INFINITY})
    void refusesWhatIsNoAmount(double wrong) {
        assertThatThrownBy(() -> new RepeatsTaken(List.of(1.0, wrong))).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 7})
    void refusesNoneAndMoreThanTwiceThree(int count) {
        assertThatThrownBy(() -> new RepeatsTaken(Collections.nCopies(count, 1.0)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static RepeatsTaken taken(String amounts) {
        return new RepeatsTaken(
                Arrays.stream(amounts.split(";")).map(Double::valueOf).toList());
    }
}
