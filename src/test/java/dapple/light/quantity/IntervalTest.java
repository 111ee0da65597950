package dapple.light.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class IntervalTest {
    @Test
    void includesItsEnds() {
        Interval interval = new Interval(1, 2);
        assertThat(interval.contains(1) && interval.contains(2)).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"0.999", "2.001", "NaN", "Infinity"})
    void excludesWhatLiesOutside(double amount) {
        assertThat(new Interval(1, 2).contains(amount)).isFalse();
    }

    @ParameterizedTest
    @CsvSource({"2, 1", "NaN, 1", "1, NaN", "1, Infinity", "-Infinity, 1"})
    void refusesEndsOutOfOrderOrWithoutNumber(double low, double high) {
        assertThatThrownBy(() -> new Interval(low, high)).isInstanceOf(IllegalArgumentException.class);
    }
}
