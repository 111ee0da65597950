package dapple.light.metrology;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Walks with a slope stand for the sum of what the weeks say of a meter: they stop where they stand out, as the search does. */
class ChangeTest {
    private static final Shape SHAPE = Shape.step(0, 1);
    private static final int WALKS = 20_000;

    /** What a week of one step adds, in standard errors: between a drift's and a knock's. */
    private static final double SLOPE = 0.45;

    private static final double ROUNDING = 1e-12;

    /** Chance of a share of 95 % in 20,000 is 0.0015, of a mean of deviations of 1 it is 0.007. */
    private static final double CHANCE = 0.005;

    private static final List<Estimate> STOPPED = Stream.generate(new SplittableRandom(4711)::split)
            .limit(WALKS)
            .map(ChangeTest::stopped)
            .toList();

    private static Estimate stopped(SplittableRandom chance) {
        double sum = 0;
        for (int steps = 1; true; steps++) {
            sum += SLOPE + chance.nextGaussian();
            Estimate estimate = Estimate.of(SHAPE, sum / steps, 1 / Math.sqrt(steps));
            if (estimate.z() > DriftSettings.USUAL.threshold()) {
                return estimate;
            }
        }
    }

    private static double covered(Function<Estimate, Change> by) {
        return STOPPED.stream()
                        .filter(one -> by.apply(one).interval().contains(SLOPE))
                        .count()
                / (double) WALKS;
    }

    /** −12 % by ln, ± 2 and 2.15 times 0.02: by hand. */
    @Test
    void whatIsToldIsGivenAWiderInterval() {
        Estimate estimate = Estimate.of(SHAPE, -0.12, 0.02);
        assertThat(Change.of(estimate).interval().low()).isCloseTo(-0.16, within(ROUNDING));
        assertThat(Change.ofTold(estimate).interval().low()).isCloseTo(-0.163, within(ROUNDING));
        assertThat(Change.ofTold(estimate).interval().high()).isCloseTo(-0.077, within(ROUNDING));
    }

    /** Worked out for a walk that stops where its sum is z times the root of its steps: 1/z, here 0.227. */
    @Test
    void whereTheSearchStopsTheSizeIsTooLargeByAFewTenthsOfAStandardError() {
        double mean = STOPPED.stream()
                .mapToDouble(one -> (one.size() - SLOPE) / one.standardError())
                .average()
                .orElseThrow();
        assertThat(mean).isCloseTo(1 / DriftSettings.USUAL.threshold(), within(0.03));
    }

    /** That alone costs an interval of two standard errors, 95.45 % by the table of the normal distribution, over one in a hundred. */
    @Test
    void whereTheSearchStopsTwoStandardErrorsAreTooFew() {
        assertThat(covered(Change::of)).isLessThan(0.945 + CHANCE);
        assertThat(covered(Change::ofTold)).isBetween(0.95 - CHANCE, 0.97);
    }
}
