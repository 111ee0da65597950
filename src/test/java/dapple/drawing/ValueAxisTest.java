package dapple.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ValueAxisTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "5 | 0 1 2 3 4 5",
                "5.01 | 0 2 4 6",
                "8 | 0 2 4 6 8",
                "0.5 | 0 0.1 0.2 0.3 0.4 0.5",
                "0.07 | 0 0.02 0.04 0.06 0.08",
                "18400 | 0 5,000 10,000 15,000 20,000",
                "0 | 0 0.2 0.4 0.6 0.8 1.0"
            })
    void stepsAreRoundAndReachTheHighest(double highest, String labels) {
        List<String> written = ValueAxis.upTo(highest, 0, 100).ticks().stream()
                .map(StripFrame.Tick::label)
                .toList();

        assertThat(written).containsExactly(labels.split(" "));
    }

    @ParameterizedTest
    @CsvSource({"0, 100", "6, 0", "3, 50"})
    void zeroIsBelowAndTheHighestStepAbove(double amount, double y) {
        assertThat(ValueAxis.upTo(5.01, 0, 100).y(amount)).isEqualTo(y);
    }
}
