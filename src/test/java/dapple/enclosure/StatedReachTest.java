package dapple.enclosure;

import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StatedReachTest {
    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, 0, -1, 20.01, Double.POSITIVE_INFINITY})
    void takesNoImpossibleHeight(double metres) {
        assertThatIllegalArgumentException().isThrownBy(() -> new StatedReach(ReachKind.GROUND, Optional.of(metres)));
    }

    @Test
    void onTheGroundHasAHeight() {
        assertThatIllegalArgumentException().isThrownBy(() -> new StatedReach(ReachKind.GROUND, Optional.empty()));
    }

    @Test
    void climbingHasNone() {
        assertThatIllegalArgumentException().isThrownBy(() -> new StatedReach(ReachKind.CLIMBS, Optional.of(0.3)));
    }
}
