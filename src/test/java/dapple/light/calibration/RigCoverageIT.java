package dapple.light.calibration;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.light.quantity.Interval;
import java.util.ArrayList;
import java.util.List;
import java.util.function.LongFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * 200 rigs. Of so many independent intervals of 95 % the share that holds the truth scatters by √(0.95 · 0.05/200) = 1.5 %,
 * so that 92 to 98 % is 2 standard deviations either way; of the lamps there are 500, and less of it is chance.
 */
class RigCoverageIT {
    private static final int SEEDS = 200;

    /** Common practice, no source, as every site may set it. */
    private static final Interval USUAL = new Interval(0.8, 1.25);

    @Test
    void intervalsOfLampsAndCoversHoldTheTruth() {
        List<Boolean> lamps = new ArrayList<>();
        List<Boolean> covers = new ArrayList<>();
        for (int seed = 0; seed < SEEDS; seed++) {
            ReadRigs rig = ReadRigs.of(seed);
            FittedRig fitted = (FittedRig) RigCalibration.of(rig.task());
            for (int lamp = 0; lamp < fitted.lamps().size(); lamp++) {
                double truth = rig.trueOutputs().get(lamp);
                lamps.add(fitted.lamps().get(lamp).interval().contains(truth));
            }
            covers.add(fitted.covers().get(0).interval().contains(rig.trueCover()));
        }
        assertThat(share(lamps)).as("lamps").isBetween(0.92, 0.98);
        assertThat(share(covers)).as("covers").isBetween(0.92, 0.98);
    }

    /** 95 % do; 90 % is 3.2 standard deviations (1.5 %) below. */
    @Test
    void aRigAsItIsStatedIsAccepted() {
        assertThat(agreeing(ReadRigs::of)).isGreaterThan(0.9);
    }

    /** 95.5 % are found. */
    @Test
    void aShelfThatIsTwelveCentimetresHigherIsFound() {
        assertThat(agreeing(seed -> ReadRigs.of(seed).withTheShelfRaised(0.12))).isLessThan(0.1);
    }

    /** 95.5 % are found. */
    @Test
    void aLampOfTwoFifthsInThePlaceOfAnotherIsFound() {
        assertThat(agreeing(seed -> ReadRigs.of(seed).withALampSwapped(0.4))).isLessThan(0.1);
    }

    private static double agreeing(LongFunction<ReadRigs> rigs) {
        return share(IntStream.range(0, SEEDS)
                .mapToObj(seed -> RigCalibration.of(rigs.apply(seed).task()))
                .map(result -> ((FittedRig) result).doubts(USUAL).isEmpty())
                .toList());
    }

    private static double share(List<Boolean> hits) {
        return hits.stream().mapToInt(hit -> hit ? 1 : 0).average().orElseThrow();
    }
}
