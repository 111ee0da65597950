package dapple.light.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.light.field.Field;
import dapple.light.quantity.Interval;
import dapple.light.quantity.Quantity;
import java.util.Arrays;
import java.util.function.LongFunction;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/** As in IntervalsTest, over so many scenes that the worst of them is seen too. */
class IntervalCoverageIT {
    private static final int SCENES = 200;
    private static final int DRAWS = 1000;

    /** The worst scene's true share and three times the 0.7 % by which a share of 1000 draws scatters. */
    private static final double WORST = 0.94 - 0.021;

    private static double[] shares(LongFunction<UncertainScenes> kind) {
        return LongStream.rangeClosed(1001, 1000 + SCENES)
                .parallel()
                .mapToObj(kind)
                .mapToDouble(IntervalCoverageIT::share)
                .sorted()
                .toArray();
    }

    private static double share(UncertainScenes drawn) {
        Field field = Field.of(drawn.scene());
        Interval interval = Intervals.of(drawn.scene(), drawn.uncertainty())
                .at(field, drawn.receiver(), field.at(drawn.receiver()))
                .getOrDefault(Quantity.UV_INDEX, new Interval(-1, -1));
        return (double) Arrays.stream(drawn.draws(DRAWS))
                        .filter(interval::contains)
                        .count()
                / DRAWS;
    }

    @Test
    void holdsNinetyFiveInAHundredDrawsInTheOpen() {
        double[] shares = shares(UncertainScenes::open);
        assertThat(shares[0]).isGreaterThan(WORST);
        assertThat(Arrays.stream(shares).average().orElse(0)).isBetween(0.945, 0.965);
    }

    /** Two moves at once can reach an edge that neither reaches alone. */
    @Test
    void holdsAtLeastThatManyBesideEdges() {
        double ofTwoMoves = 0.01;
        double[] shares = shares(UncertainScenes::edge);
        assertThat(shares[0]).isGreaterThan(WORST - ofTwoMoves);
        assertThat(Arrays.stream(shares).average().orElse(0)).isBetween(0.945, 0.985);
    }
}
