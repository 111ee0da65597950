package dapple.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dapple.light.quantity.Interval;
import dapple.light.zone.Zone;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShareBarTest {
    @Test
    void partsFillTheBarOneAfterTheOther() {
        ShareBar bar = ShareBar.of(
                Map.of(
                        Zone.OVER_CEILING, 0.1,
                        Zone.ABOVE_TARGET, 0.0,
                        Zone.BASKING, 0.2,
                        Zone.GRADIENT, 0.3,
                        Zone.SHADE, 0.4),
                Map.of());
        double end = 0;
        for (ShareBar.Part part : bar.parts()) {
            assertThat(part.x()).isCloseTo(end, within(1e-9));
            end = part.x() + part.width();
        }
        assertThat(end).isCloseTo(640, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "0.001, under 1", "0.005, 1", "0.104, 10", "0.994, 99", "0.999, over 99", "1, 100"})
    void somethingIsNeverRoundedToNothingNorMostToAll(double share, String words) {
        ShareBar bar = ShareBar.of(Map.of(Zone.SHADE, share), Map.of());
        assertThat(bar.parts().get(0).percent()).isEqualTo(words);
    }

    @Test
    void anIntervalThatSaysNoMoreIsLeftOut() {
        ShareBar bar = ShareBar.of(
                Map.of(Zone.BASKING, 0.1, Zone.SHADE, 0.9),
                Map.of(Zone.BASKING, new Interval(0.06, 0.15), Zone.SHADE, new Interval(0.899, 0.901)));
        assertThat(bar.parts()).extracting(ShareBar.Part::isUncertain).containsExactly(true, false);
    }

    @Test
    void whereNothingIsReachableThereIsNoBar() {
        assertThat(ShareBar.of(Map.of(), Map.of()).parts()).isEmpty();
    }
}
