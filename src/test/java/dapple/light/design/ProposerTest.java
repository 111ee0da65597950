package dapple.light.design;

import static dapple.light.design.Column.COLUMN;
import static dapple.light.design.Column.LEVEL;
import static dapple.light.design.Column.atHand;
import static dapple.light.design.Column.open;
import static dapple.light.design.Column.option;
import static dapple.light.design.Column.propose;
import static dapple.light.design.Column.rigs;
import static dapple.light.design.Column.spot;
import static dapple.light.design.Column.task;
import static dapple.light.design.Column.uv;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dapple.light.cover.Filter;
import dapple.light.field.Receiver;
import dapple.light.geometry.Bounds;
import dapple.light.geometry.Box;
import dapple.light.geometry.Solid;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Quantity;
import dapple.light.source.Lamp;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class ProposerTest {
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

    /** At 50 cm it would be right, and there it must not hang. */
    @Test
    void hangsNoLampWhereItIsClosed() {
        LampOption open = atHand();
        LampOption closed = new LampOption(
                open.id(), open.poses(), open.powerWatts(), open.origin(), open.count(), Set.of("50 cm"));
        assertThat(propose(task(open(), List.of(closed), COLUMN, uv(3.5, 4.5))))
                .isInstanceOf(ProposalAnswer.NoneFound.class);
    }

    /** 1/0.2² = 25 through sheets that pass 0.4: 4 through two. */
    @Test
    void laysAnotherLayer() {
        Filter.Plane plane = SeededEnclosure.mesh(0.1, 1).plane();
        Filter sheet = new Filter.Measured(plane, Map.of(Quantity.UV_INDEX, 0.4), 1);
        Frame frame = open(new CoverChoice("sheet", sheet, List.of(0, 1, 2)));
        List<PlannedRig> rigs = rigs(propose(task(frame, List.of(atHand()), COLUMN.subList(0, 1), uv(3.9, 4.1))));
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
        LampOption goes =
                new LampOption("hung", List.of(), Optional.of(50.0), new Origin.Hung(hung, Origin.Freedom.MAY_GO), 1);
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
        assertThat(rigs.get(0).lamps())
                .extracting(PlannedLamp::placeId)
                .containsExactly(Optional.empty(), Optional.of("90 cm"));
    }

    @Test
    void movesALampThatMustHang() {
        Lamp hung = new Pose(spot("hung")).at(new Vec(0, 0, 0.2));
        LampOption must = option(hung, new Origin.Hung(hung, Origin.Freedom.MAY_MOVE), 1);
        List<PlannedRig> rigs = rigs(propose(task(open(), List.of(must, atHand()), COLUMN, uv(3.5, 4.5))));
        assertThat(rigs)
                .isNotEmpty()
                .allSatisfy(rig -> assertThat(rig.lamps())
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
        LampOption unknown =
                new LampOption("spot", List.of(new Pose(spot("spot"))), Optional.empty(), new Origin.AtHand(), 1);
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
        Candidates candidates =
                new Candidates(task(frame, List.of(option(tube, new Origin.AtHand(), 1)), places, uv(0, 100)));
        assertThat(candidates.size()).isEqualTo(1);
        assertThat(candidates.get(0).place()).map(HangingPlace::id).hasValue("free");
    }

    /** 4 and 3.70 from two that hang 2 cm apart, where new ones must be 5 cm apart. */
    @Test
    void keepsLampsThatHangCloserThanNewOnesMay() {
        Lamp one = new Pose(spot("one")).at(new Vec(0, 0, 0.5));
        Lamp other = new Pose(spot("other")).at(new Vec(0, 0, 0.52));
        List<LampOption> options = List.of(
                option(one, new Origin.Hung(one, Origin.Freedom.MAY_MOVE), 1),
                option(other, new Origin.Hung(other, Origin.Freedom.MAY_GO), 1));
        PlannedRig first =
                rigs(propose(task(open(), options, List.of(), uv(7.5, 8)))).get(0);
        assertThat(first.changes()).isZero();
        assertThat(first.lamps()).hasSize(2);
    }

    @Test
    void findsTheMostEvenFallOfLight() {
        List<HangingPlace> row = IntStream.range(0, 12)
                .mapToObj(step ->
                        new HangingPlace("at " + step, new Vec(0.1 * (step % 6), 0, 0.5 + (step < 6 ? 0 : 0.4))))
                .toList();
        Way way = new Way(
                Quantity.UV_INDEX,
                IntStream.range(0, 5)
                        .mapToObj(step -> new Receiver(new Vec(0.2 * step, 0, 0), LEVEL))
                        .toList());
        ProposalTask task =
                new ProposalTask(open(), List.of(atHand()), row, List.of(uv(0.5, 5)), Optional.of(way), 1, 0);
        List<Proposal> found = ((ProposalAnswer.Found) propose(task)).proposals();
        Proposal even = found.stream()
                .filter(shown -> shown.bestIn().contains(Merit.BEST_GRADIENT))
                .findFirst()
                .orElseThrow();
        double least = even.rig().unevenness().orElseThrow();
        assertThat(found)
                .allSatisfy(shown ->
                        assertThat(shown.rig().unevenness().orElseThrow()).isGreaterThanOrEqualTo(least));
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
