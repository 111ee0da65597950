package dapple.light.field;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.light.field.FieldAccuracy.Family;
import dapple.light.field.FieldAccuracy.Outcome;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The first seeds of each family; {@link FieldAccuracySimulationIT} has many more. */
class FieldAccuracyTest {
    private static final int SHARE = 10;

    @ParameterizedTest
    @EnumSource(Family.class)
    void agreesWithBruteForce(Family family) {
        assertThat(FieldAccuracy.compared(family, family.scenes / SHARE)).allMatch(Outcome::isWithinBar);
    }

    /** Of all families together: so few scenes say little of one. */
    @Test
    void isSeldomFurtherOffThanItSays() {
        List<List<List<Outcome>>> byFamily = Stream.of(Family.values())
                .map(family -> FieldAccuracy.estimated(family, family.scenes / SHARE))
                .toList();
        for (int accuracy = 0; accuracy < byFamily.get(0).size(); accuracy++) {
            int column = accuracy;
            List<Outcome> all = byFamily.stream()
                    .flatMap(family -> family.get(column).stream())
                    .toList();
            assertThat(FieldAccuracy.honest(all))
                    .as(() -> FieldAccuracy.told(all))
                    .isGreaterThanOrEqualTo(FieldAccuracy.HONEST);
        }
    }
}
