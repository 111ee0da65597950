package dapple.light.metrology;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Three repeats, their median, 15 % (common practice, no source). */
class RepeatsTest {
    private static final double STEP = 0.1;

    @ParameterizedTest
    @CsvSource({"3.0, 3.2, 3.1, 3.1", "5.0, 1.0, 1.1, 1.1", "0, 0, 0, 0"})
    void takesTheOneInTheMiddle(double first, double second, double third, double median) {
        assertThat(new Repeats(List.of(first, second, third)).median()).isEqualTo(median);
    }

    @Test
    void takesTheMiddleOfTwo() {
        assertThat(new Repeats(List.of(3.0, 4.0)).median()).isEqualTo(3.5);
    }

    /** 0.4 of 3.0 is 13 %, 0.5 is 17 %. */
    @ParameterizedTest
    @CsvSource({"2.8, 3.0, 3.2, false", "2.8, 3.0, 3.3, true", "3.0, 3.0, 0.0, true"})
    void asksAgainBeyondFifteenPercent(double first, double second, double third, boolean again) {
        assertThat(new Repeats(List.of(first, second, third)).asksAgain(STEP)).isEqualTo(again);
    }

    @ParameterizedTest
    @CsvSource({"0.1, 0.2, 0.2, false", "0.1, 0.3, 0.2, true", "0, 0, 0, false"})
    void leavesOneStepOfTheDisplay(double first, double second, double third, boolean again) {
        assertThat(new Repeats(List.of(first, second, third)).asksAgain(STEP)).isEqualTo(again);
    }

    @Test
    void isCompleteWithThree() {
        assertThat(new Repeats(List.of(1.0, 1.0)).isComplete()).isFalse();
        assertThat(new Repeats(List.of(1.0, 1.0, 1.0)).isComplete()).isTrue();
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, -0.1, Double.POSITIVE_INFINITY})
    void refusesWhatIsNoAmount(double wrong) {
        assertThatThrownBy(() -> new Repeats(List.of(1.0, wrong))).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void refusesNothing() {
        assertThatThrownBy(() -> new Repeats(List.of())).isInstanceOf(IllegalArgumentException.class);
    }
}
