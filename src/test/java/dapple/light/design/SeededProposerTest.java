package dapple.light.design;

import static dapple.light.design.Column.ALONE;
import static dapple.light.design.Column.LEVEL;
import static dapple.light.design.Column.propose;
import static dapple.light.design.Column.rigs;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dapple.light.design.PlantedTask.Size;
import dapple.light.field.Facing;
import dapple.light.survey.Crew;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Proposals in seeded enclosures, and how they are worked out. */
class SeededProposerTest {
    static LongStream seeds() {
        return LongStream.rangeClosed(1, 6);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void findsWhatIsPlantedAndSaysWhatTheEngineSays(long seed) {
        PlantedTask planted = PlantedTask.of(seed, Size.SMALL, seed % 2 == 0 ? LEVEL : new Facing.Maximum());
        assertThat(rigs(propose(planted.task())))
                .isNotEmpty()
                .allSatisfy(rig -> rig.demands().forEach(met -> {
                    assertThat(met.isMet()).isTrue();
                    assertThat(PlantedTask.light(rig.scene(), met.worst()))
                            .containsEntry(met.demand().quantity(), met.amount());
                }));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void isAsGoodAsEveryRigOneByOne(long seed) {
        PlantedTask planted = PlantedTask.of(seed, Size.SMALL, LEVEL);
        double loss = rigs(propose(planted.task())).stream()
                .mapToDouble(PlannedRig::loss)
                .min()
                .orElse(100);
        assertThat(loss).isLessThanOrEqualTo(1.05 * OneByOne.of(planted.task()).loss() + 0.002);
    }

    @Test
    void showsThreeThatDiffer() {
        PlantedTask planted = PlantedTask.of(3, Size.SMALL, LEVEL);
        List<Proposal> found = ((ProposalAnswer.Found) propose(planted.task())).proposals();
        assertThat(found)
                .extracting(Proposal::merit)
                .containsExactly(Merit.FEWEST_CHANGES, Merit.LEAST_POWER, Merit.WELL_INSIDE);
        assertThat(found).extracting(shown -> shown.rig().scene()).doesNotHaveDuplicates();
    }

    /** A search of every rig, and one that places lamps from several starts. */
    private static Stream<Arguments> searches() {
        return Stream.of(Arguments.of(Size.SMALL, Effort.USUAL), Arguments.of(Size.MIDDLE, new Effort(300, 1000)));
    }

    @ParameterizedTest
    @MethodSource("searches")
    void findsTheSameWithTwoHands(Size size, Effort effort) {
        PlantedTask planted = PlantedTask.of(2, size, LEVEL);
        assertThat(Proposer.propose(planted.task(), effort, new TwoHands(), share -> {}))
                .usingRecursiveComparison()
                .isEqualTo(Proposer.propose(planted.task(), effort, ALONE, share -> {}));
    }

    /** Two threads that take the numbers as they come. */
    private static final class TwoHands implements Crew {
        @Override
        public <T> void each(int count, Supplier<T> tools, Work<T> work) {
            AtomicInteger next = new AtomicInteger();
            IntStream.range(0, 2).parallel().forEach(hand -> {
                T tool = tools.get();
                for (int index = next.getAndIncrement(); index < count; index = next.getAndIncrement()) {
                    work.at(tool, index);
                }
            });
        }

        @Override
        public <T> T alone(Supplier<T> work) {
            return work.get();
        }
    }

    @Test
    void tellsItsProgressFromStartToEnd() {
        List<Double> told = new ArrayList<>();
        Proposer.propose(PlantedTask.of(1, Size.SMALL, LEVEL).task(), ALONE, told::add);
        assertThat(told).isSorted().hasSizeGreaterThan(20).last().isEqualTo(1.0);
    }

    @Test
    void isGivenUpWhenTheCrewGivesUp() {
        AtomicInteger steps = new AtomicInteger();
        Crew tired = Crew.ofOne(() -> {
            if (steps.incrementAndGet() > 50) {
                throw new CancellationException();
            }
        });
        ProposalTask task = PlantedTask.of(1, Size.SMALL, LEVEL).task();
        assertThatThrownBy(() -> Proposer.propose(task, tired, share -> {})).isInstanceOf(CancellationException.class);
    }
}
