package dapple.light.design;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.light.design.PlantedTask.Size;
import dapple.light.field.Facing;
import dapple.light.geometry.Vec;
import dapple.light.survey.Crew;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.LongPredicate;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/** As in ProposerTest, in many seeded enclosures, and against every rig looked at one by one. */
class ProposerSimulationIT {
    private static final Facing LEVEL = new Facing.Direction(Vec.UP);
    private static final int ENCLOSURES = 100;
    private static final int FEWER = 40;

    /** In so many of a hundred a rig that is known to be there must be found. */
    private static final int FOUND = 95;

    /** How much worse the score may be than the best of all, as a factor, and beside 0. */
    private static final double WORSE = 1.05;

    private static final double BESIDE_ZERO = 0.002;

    /** Only single lamps are looked at one by one, so that places must be found for more. */
    private static final Effort PLACING = new Effort(300, Effort.USUAL.descents());

    private static final Effort ROUGH = new Effort(300, 200);

    private static final Map<Long, OneByOne.Best> BEST = new ConcurrentHashMap<>();

    private static ProposalAnswer propose(PlantedTask planted, Effort effort) {
        return Proposer.propose(planted.task(), effort, Crew.ofOne(() -> {}), share -> {});
    }

    private static long count(int enclosures, LongPredicate isGood) {
        return LongStream.rangeClosed(1, enclosures).parallel().filter(isGood).count();
    }

    private static List<PlannedRig> rigs(ProposalAnswer answer) {
        return answer instanceof ProposalAnswer.Found found
                ? found.proposals().stream().map(Proposal::rig).toList()
                : List.of();
    }

    private static boolean isFound(PlantedTask planted, Effort effort) {
        List<PlannedRig> rigs = rigs(propose(planted, effort));
        return !rigs.isEmpty() && rigs.stream().allMatch(PlannedRig::isMet);
    }

    @Test
    void findsWhatIsPlantedWhereReceiversFaceTheLight() {
        assertThat(count(
                        ENCLOSURES,
                        seed -> isFound(PlantedTask.of(seed, Size.MIDDLE, new Facing.Maximum()), Effort.USUAL)))
                .isGreaterThanOrEqualTo(FOUND);
    }

    @Test
    void findsWhatIsPlantedAmongTooManyToLookAt() {
        assertThat(count(FEWER, seed -> isFound(PlantedTask.of(seed, Size.LARGE, LEVEL), ROUGH)))
                .isEqualTo(FEWER);
    }

    private static boolean isAsGood(double loss, double best) {
        return loss <= WORSE * best + BESIDE_ZERO;
    }

    private static boolean isAsGoodAsTheBest(long seed, Effort effort) {
        PlantedTask planted = PlantedTask.of(seed, Size.MIDDLE, LEVEL);
        List<PlannedRig> rigs = rigs(propose(planted, effort));
        if (rigs.isEmpty()) {
            return false;
        }
        OneByOne.Best best = BEST.computeIfAbsent(seed, unused -> OneByOne.of(planted.task()));
        PlannedRig fewest = rigs.stream()
                .min(Comparator.comparingInt(PlannedRig::changes).thenComparingDouble(PlannedRig::loss))
                .get();
        PlannedRig least = rigs.stream()
                .min(Comparator.comparingDouble(
                                (PlannedRig rig) -> rig.powerWatts().orElse(1e9))
                        .thenComparingDouble(PlannedRig::loss))
                .get();
        double loss = rigs.stream().mapToDouble(PlannedRig::loss).min().orElse(1e9);
        return isAsGood(loss, best.loss())
                && fewest.changes() == best.changes()
                && isAsGood(fewest.loss(), best.lossOfFewest())
                && least.powerWatts().orElse(1e9) <= best.watts() + 1e-6
                && isAsGood(least.loss(), best.lossOfLeast());
    }

    @Test
    void findsWhatIsPlantedAndIsAsGoodAsEveryRigOneByOne() {
        assertThat(count(ENCLOSURES, seed -> isAsGoodAsTheBest(seed, Effort.USUAL)))
                .isEqualTo(ENCLOSURES);
    }

    @Test
    void isNearlyAsGoodByPlacing() {
        assertThat(count(ENCLOSURES, seed -> isAsGoodAsTheBest(seed, PLACING))).isGreaterThanOrEqualTo(FOUND);
    }
}
