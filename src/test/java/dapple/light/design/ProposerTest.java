package dapple.light.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dapple.light.cover.Filter;
import dapple.light.design.Binding.Why;
import dapple.light.design.PlantedTask.Size;
import dapple.light.field.Facing;
import dapple.light.field.Receiver;
import dapple.light.geometry.Bounds;
import dapple.light.geometry.Box;
import dapple.light.geometry.Solid;
import dapple.light.geometry.Vec;
import dapple.light.judging.Band;
import dapple.light.quantity.Quantity;
import dapple.light.source.Lamp;
import dapple.light.survey.Crew;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class ProposerTest {
    private static final Facing LEVEL = new Facing.Direction(Vec.UP);
    private static final Crew ALONE = Crew.ofOne(() -> {});
    private static final Receiver FLOOR = new Receiver(new Vec(0, 0, 0), LEVEL);

    /** Places above the receiver, each 10 cm from 20 cm on. */
    private static final List<HangingPlace> COLUMN = IntStream.rangeClosed(2, 10)
            .mapToObj(step -> new HangingPlace(step + "0 cm", new Vec(0, 0, step / 10.0)))
            .toList();

    /** A spot that gives UV index 1 and 4000 lx at 1 m, hence 1/h² and 4000/h² [rp16]. */
    private static Lamp spot(String id) {
        return SeededEnclosure.spot(id, new Vec(0, 0, 0.9), 1 / 0.09, 4000 / 0.09);
    }

    private static LampOption option(Lamp lamp, Origin origin, int count) {
        return new LampOption(lamp.id(), List.of(new Pose(lamp)), Optional.of(50.0), origin, count);
    }

    private static LampOption atHand() {
        return option(spot("spot"), new Origin.AtHand(), 1);
    }

    private static Demand uv(double low, double high) {
        return Demand.basking("basking", Quantity.UV_INDEX, FLOOR, new Band(low, high));
    }

    private static Frame open(CoverChoice... covers) {
        return new Frame(0.001, List.of(covers), List.of(), Optional.empty());
    }

    private static ProposalTask task(Frame frame, List<LampOption> options, List<HangingPlace> places, Demand... demands) {
        return new ProposalTask(frame, options, places, List.of(demands), Optional.empty(), 2, 0.05);
    }

    private static ProposalAnswer propose(ProposalTask task) {
        return Proposer.propose(task, ALONE, share -> {});
    }

    private static List<PlannedRig> rigs(ProposalAnswer answer) {
        return answer instanceof ProposalAnswer.Found found
                ? found.proposals().stream().map(Proposal::rig).toList()
                : List.of();
    }

    private static ProposalAnswer.NoneFound none(ProposalTask task) {
        ProposalAnswer answer = propose(task);
        assertThat(answer).isInstanceOf(ProposalAnswer.NoneFound.class);
        return (ProposalAnswer.NoneFound) answer;
    }

    /** 1/h² = 4 at 50 cm [rp16]; 40 cm gives 6.25, 60 cm 2.78. */
    @Test
    void hangsASpotWhereTheInverseSquareLawSays() {
        List<PlannedRig> rigs = rigs(propose(task(open(), List.of(atHand()), COLUMN, uv(3.5, 4.5))));
        assertThat(rigs).singleElement().satisfies(rig -> {
            assertThat(rig.lamps().get(0).placeId()).hasValue("50 cm");
            assertThat(rig.demands().get(0).amount()).isCloseTo(4, within(0.01));
            assertThat(rig.changes()).isEqualTo(1);
        });
    }

    /** 1/0.2² = 25 through sheets that pass 0.4: 4 through two. */
    @Test
    void laysAnotherLayer() {
        Filter.Plane plane = SeededEnclosure.mesh(0.1, 1).plane();
        Filter sheet = new Filter.Measured(plane, Map.of(Quantity.UV_INDEX, 0.4), 1);
        Frame frame = open(new CoverChoice("sheet", sheet, List.of(0, 1, 2)));
        List<PlannedRig> rigs =
                rigs(propose(task(frame, List.of(atHand()), COLUMN.subList(0, 1), uv(3.9, 4.1))));
        assertThat(rigs).singleElement().satisfies(rig -> {
            assertThat(rig.covers()).containsExactly(new PlannedCover("sheet", 1, 2));
            assertThat(rig.changes()).isEqualTo(2);
        });
    }

    @Test
    void leavesARigAloneThatMeetsEveryDemand() {
        Lamp hung = new Pose(spot("hung")).at(new Vec(0, 0, 0.5));
        List<LampOption> options = List.of(option(hung, new Origin.Hung(hung, Origin.Freedom.MAY_GO), 1), atHand());
        ProposalAnswer answer = propose(task(open(), options, COLUMN, uv(3.5, 4.5)));
        assertThat(rigs(answer).get(0).changes()).isZero();
        assertThat(rigs(answer).get(0).lamps()).extracting(PlannedLamp::deed).containsExactly(Deed.KEPT);
    }

    @Test
    void takesDownALampThatMayGo() {
        Lamp hung = new Pose(spot("hung")).at(new Vec(0, 0, 0.2));
        LampOption goes = new LampOption(
                "hung", List.of(), Optional.of(50.0), new Origin.Hung(hung, Origin.Freedom.MAY_GO), 1);
        List<PlannedRig> rigs = rigs(propose(task(open(), List.of(goes, atHand()), COLUMN, uv(3.5, 4.5))));
        assertThat(rigs.get(0).takenDown()).containsExactly("hung");
        assertThat(rigs.get(0).changes()).isEqualTo(2);
    }

    /** 4 in all: 2.78 from the one that stays at 60 cm, 1.23 from another at 90 cm. */
    @Test
    void addsToALampThatStays() {
        Lamp hung = new Pose(spot("hung")).at(new Vec(0, 0, 0.6));
        LampOption stays = option(hung, new Origin.Hung(hung, Origin.Freedom.STAYS), 1);
        List<PlannedRig> rigs = rigs(propose(task(open(), List.of(stays, atHand()), COLUMN, uv(3.95, 4.05))));
        assertThat(rigs.get(0).lamps()).extracting(PlannedLamp::placeId).containsExactly(Optional.empty(), Optional.of("90 cm"));
    }

    @Test
    void movesALampThatMustHang() {
        Lamp hung = new Pose(spot("hung")).at(new Vec(0, 0, 0.2));
        LampOption must = option(hung, new Origin.Hung(hung, Origin.Freedom.MAY_MOVE), 1);
        List<PlannedRig> rigs = rigs(propose(task(open(), List.of(must, atHand()), COLUMN, uv(3.5, 4.5))));
        assertThat(rigs).isNotEmpty().allSatisfy(rig -> assertThat(rig.lamps())
                .extracting(PlannedLamp::optionId)
                .contains("hung"));
    }

    /** 1/h² is never 8 of one, but 4 + 4 of two side by side, 50 cm high. */
    @Test
    void hangsTwoOfALampThatIsThereTwice() {
        List<HangingPlace> pair = List.of(
                new HangingPlace("left", new Vec(-0.03, 0, 0.5)), new HangingPlace("right", new Vec(0.03, 0, 0.5)));
        LampOption two = option(spot("spot"), new Origin.ToBuy(), 2);
        List<PlannedRig> rigs = rigs(propose(task(open(), List.of(two), pair, uv(7, 9))));
        assertThat(rigs).singleElement().satisfies(rig -> {
            assertThat(rig.scene().lamps()).extracting(Lamp::id).containsExactly("spot", "spot #2");
            assertThat(rig.changes()).isEqualTo(4);
            assertThat(rig.powerWatts()).hasValue(100.0);
        });
    }

    @Test
    void saysNothingOfPowerThatIsNotKnown() {
        LampOption unknown = new LampOption(
                "spot", List.of(new Pose(spot("spot"))), Optional.empty(), new Origin.AtHand(), 1);
        ProposalAnswer answer = propose(task(open(), List.of(unknown), COLUMN, uv(3.5, 4.5)));
        assertThat(rigs(answer).get(0).powerWatts()).isEmpty();
        assertThat(((ProposalAnswer.Found) answer).proposals()).noneMatch(shown -> shown.merit() == Merit.LEAST_POWER);
    }

    @Test
    void hangsNoLampInASolidNorThroughAWall() {
        Lamp tube = SeededEnclosure.tube("tube", new Vec(0, 0, 0), 4, 3000);
        List<HangingPlace> places = List.of(
                new HangingPlace("in a wall", new Vec(0.2, 0.3, 0.5)),
                new HangingPlace("in a rock", new Vec(0.6, 0.3, 0.5)),
                new HangingPlace("free", new Vec(0.6, 0.3, 0.7)));
        Solid rock = Box.of(new Vec(0.55, 0.2, 0.45), new Vec(0.65, 0.4, 0.55), 0);
        Bounds room = Bounds.around(new Vec(0, 0, 0), new Vec(1.2, 0.6, 0.9));
        Frame frame = new Frame(0.001, List.of(), List.of(rock), Optional.of(room));
        Candidates candidates = new Candidates(
                task(frame, List.of(option(tube, new Origin.AtHand(), 1)), places, uv(0, 100)));
        assertThat(candidates.size()).isEqualTo(1);
        assertThat(candidates.get(0).place()).map(HangingPlace::id).hasValue("free");
    }

    /** At 50 cm alone the floor has its 4, and then 10 cm above it there is 1/0.4² = 6.25. */
    @Test
    void namesTheCeilingThatLiesBelowWhatTheBandNeeds() {
        Receiver perch = new Receiver(new Vec(0, 0, 0.1), LEVEL);
        Demand ceiling = Demand.ceiling("ceiling", Quantity.UV_INDEX, List.of(perch), 3);
        ProposalAnswer.NoneFound none = none(task(open(), List.of(atHand()), COLUMN, uv(3.5, 4.5), ceiling));
        assertThat(none.isExhaustive()).isTrue();
        assertThat(none.bindings()).extracting(binding -> binding.demand().name()).containsExactly("basking", "ceiling");
    }

    /** As above: 6.25 over 3. */
    @Test
    void saysByWhatFactorADemandBinds() {
        Receiver perch = new Receiver(new Vec(0, 0, 0.1), LEVEL);
        Demand ceiling = Demand.ceiling("ceiling", Quantity.UV_INDEX, List.of(perch), 3);
        Binding binding = none(task(open(), List.of(atHand()), COLUMN, uv(3.5, 4.5), ceiling)).bindings().get(1);
        assertThat(binding.why()).isEqualTo(Why.TOO_MUCH);
        assertThat(binding.missingFactor()).hasValueSatisfying(factor -> assertThat(factor)
                .isCloseTo(6.25 / 3, within(0.01)));
        assertThat(binding.rig().orElseThrow().lamps().get(0).placeId()).hasValue("50 cm");
    }

    @Test
    void namesTheQuantityThatNoLampGives() {
        Demand warmth = Demand.basking("warmth", Quantity.IR_A, FLOOR, new Band(100, 200));
        ProposalAnswer.NoneFound none = none(task(open(), List.of(atHand()), COLUMN, uv(3.5, 4.5), warmth));
        assertThat(none.bindings()).singleElement().satisfies(binding -> {
            assertThat(binding.demand().name()).isEqualTo("warmth");
            assertThat(binding.why()).isEqualTo(Why.NO_LAMP_GIVES_IT);
            assertThat(binding.missingFactor()).isEmpty();
        });
    }

    @Test
    void saysThatNoLightArrives() {
        Solid roof = Box.of(new Vec(-2, -2, 0.1), new Vec(2, 2, 0.15), 0);
        Frame frame = new Frame(0.001, List.of(), List.of(roof), Optional.empty());
        assertThat(none(task(frame, List.of(atHand()), COLUMN, uv(1, 2))).bindings())
                .extracting(Binding::why)
                .containsExactly(Why.NONE_ARRIVES);
    }

    /** The nearest is 20 cm with 25 where 50 are asked: two lamps are not allowed so near to one another. */
    @Test
    void saysTheNearestRigWhereAllIsTooWeak() {
        ProposalAnswer.NoneFound none = none(task(open(), List.of(atHand()), COLUMN, uv(50, 60)));
        assertThat(none.nearest().unmet()).singleElement().satisfies(missed -> assertThat(missed.missingFactor())
                .isCloseTo(2, within(0.01)));
        assertThat(none.bindings()).extracting(Binding::why).containsExactly(Why.TOO_LITTLE);
    }

    /** 4 and 3.70 from two that hang 2 cm apart, where new ones must be 5 cm apart. */
    @Test
    void keepsLampsThatHangCloserThanNewOnesMay() {
        Lamp one = new Pose(spot("one")).at(new Vec(0, 0, 0.5));
        Lamp other = new Pose(spot("other")).at(new Vec(0, 0, 0.52));
        List<LampOption> options = List.of(
                option(one, new Origin.Hung(one, Origin.Freedom.MAY_MOVE), 1),
                option(other, new Origin.Hung(other, Origin.Freedom.MAY_GO), 1));
        PlannedRig first = rigs(propose(task(open(), options, List.of(), uv(7.5, 8)))).get(0);
        assertThat(first.changes()).isZero();
        assertThat(first.lamps()).hasSize(2);
    }

    @Test
    void findsTheMostEvenFallOfLight() {
        List<HangingPlace> row = IntStream.range(0, 12)
                .mapToObj(step -> new HangingPlace("at " + step, new Vec(0.1 * (step % 6), 0, 0.5 + 0.4 * (step / 6))))
                .toList();
        Way way = new Way(
                Quantity.UV_INDEX,
                IntStream.range(0, 5)
                        .mapToObj(step -> new Receiver(new Vec(0.2 * step, 0, 0), LEVEL))
                        .toList());
        ProposalTask task = new ProposalTask(
                open(), List.of(atHand()), row, List.of(uv(0.5, 5)), Optional.of(way), 1, 0);
        List<Proposal> found = ((ProposalAnswer.Found) propose(task)).proposals();
        Proposal even = found.stream().filter(shown -> shown.bestIn().contains(Merit.BEST_GRADIENT)).findFirst().orElseThrow();
        double least = even.rig().unevenness().orElseThrow();
        assertThat(found).allSatisfy(shown -> assertThat(shown.rig().unevenness().orElseThrow())
                .isGreaterThanOrEqualTo(least));
    }

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 6);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void findsWhatIsPlantedAndSaysWhatTheEngineSays(long seed) {
        PlantedTask planted = PlantedTask.of(seed, Size.SMALL, seed % 2 == 0 ? LEVEL : new Facing.Maximum());
        assertThat(rigs(propose(planted.task()))).isNotEmpty().allSatisfy(rig -> rig.demands().forEach(met -> {
            assertThat(met.isMet()).isTrue();
            assertThat(PlantedTask.light(rig.scene(), met.worst())).containsEntry(met.demand().quantity(), met.amount());
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
        assertThat(found).extracting(Proposal::merit).containsExactly(Merit.FEWEST_CHANGES, Merit.LEAST_POWER, Merit.WELL_INSIDE);
        assertThat(found).extracting(shown -> shown.rig().scene()).doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void findsTheSameWithTwoHands(Kind which) {
        PlantedTask planted = PlantedTask.of(2, which.size, LEVEL);
        assertThat(Proposer.propose(planted.task(), which.effort, new TwoHands(), share -> {}))
                .usingRecursiveComparison()
                .isEqualTo(Proposer.propose(planted.task(), which.effort, ALONE, share -> {}));
    }

    /** A search of every kind. */
    private enum Kind {
        ALL(Size.SMALL, Effort.USUAL),
        PLACED(Size.MIDDLE, new Effort(300, 1000));

        private final Size size;
        private final Effort effort;

        Kind(Size size, Effort effort) {
            this.size = size;
            this.effort = effort;
        }
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
        assertThatThrownBy(() -> Proposer.propose(task, tired, share -> {}))
                .isInstanceOf(CancellationException.class);
    }

    @Test
    void refusesMoreLampsThanFour() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new ProposalTask(open(), List.of(), COLUMN, List.of(), Optional.empty(), 5, 0));
    }

    @Test
    void refusesTwoOptionsOfOneId() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> task(open(), List.of(atHand(), atHand()), COLUMN, uv(1, 2)));
    }
}
