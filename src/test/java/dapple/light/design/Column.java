package dapple.light.design;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.light.field.Facing;
import dapple.light.field.Receiver;
import dapple.light.geometry.Vec;
import dapple.light.judging.Band;
import dapple.light.quantity.Quantity;
import dapple.light.source.Lamp;
import dapple.light.survey.Crew;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** A spot that may hang at places one above the other, and what is proposed of it. */
final class Column {
    static final Facing LEVEL = new Facing.Direction(Vec.UP);
    static final Crew ALONE = Crew.ofOne(() -> {});
    static final Receiver FLOOR = new Receiver(new Vec(0, 0, 0), LEVEL);

    /** Places above the receiver, each 10 cm from 20 cm on. */
    static final List<HangingPlace> COLUMN = IntStream.rangeClosed(2, 10)
            .mapToObj(step -> new HangingPlace(step + "0 cm", new Vec(0, 0, step / 10.0)))
            .toList();

    /** A spot that gives UV index 1 and 4000 lx at 1 m, hence 1/h² and 4000/h² [rp16]. */
    static Lamp spot(String id) {
        return SeededEnclosure.spot(id, new Vec(0, 0, 0.9), 1 / 0.09, 4000 / 0.09);
    }

    static LampOption option(Lamp lamp, Origin origin, int count) {
        return new LampOption(lamp.id(), List.of(new Pose(lamp)), Optional.of(50.0), origin, count);
    }

    static LampOption atHand() {
        return option(spot("spot"), new Origin.AtHand(), 1);
    }

    static Demand uv(double low, double high) {
        return Demand.basking("basking", Quantity.UV_INDEX, FLOOR, new Band(low, high));
    }

    static Frame open(CoverChoice... covers) {
        return new Frame(0.001, List.of(covers), List.of(), Optional.empty());
    }

    static ProposalTask task(Frame frame, List<LampOption> options, List<HangingPlace> places, Demand... demands) {
        return new ProposalTask(frame, options, places, List.of(demands), Optional.empty(), 2, 0.05);
    }

    static ProposalAnswer propose(ProposalTask task) {
        return Proposer.propose(task, ALONE, share -> {});
    }

    static List<PlannedRig> rigs(ProposalAnswer answer) {
        return answer instanceof ProposalAnswer.Found found
                ? found.proposals().stream().map(Proposal::rig).toList()
                : List.of();
    }

    static ProposalAnswer.NoneFound none(ProposalTask task) {
        ProposalAnswer answer = propose(task);
        assertThat(answer).isInstanceOf(ProposalAnswer.NoneFound.class);
        return (ProposalAnswer.NoneFound) answer;
    }

    private Column() {}
}
