package dapple.light.design;

import dapple.light.field.Field;
import dapple.light.field.Receiver;
import dapple.light.field.Scene;
import dapple.light.source.Lamp;
import dapple.light.survey.Crew;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Asks the engine for the whole light of a mix: no table, no sum of parts. */
final class Verifier {
    private final SearchSpace space;
    private final ProposalTask task;
    private final Judge judge;

    Verifier(SearchSpace space) {
        this.space = space;
        this.task = space.task();
        this.judge = space.judge();
    }

    static List<Verified> all(SearchSpace space, List<Mix> mixes, Crew crew) {
        AtomicReferenceArray<Verified> done = new AtomicReferenceArray<>(mixes.size());
        crew.each(
                mixes.size(),
                () -> new Verifier(space),
                (verifier, index) -> done.set(index, verifier.verify(mixes.get(index))));
        return IntStream.range(0, mixes.size()).mapToObj(done::get).toList();
    }

    Verified verify(Mix mix) {
        List<PlannedLamp> lamps = lamps(mix);
        List<Integer> layering = space.tables().get(mix.layering()).layering();
        Scene scene = task.frame().scene(lamps.stream().map(PlannedLamp::lamp).toList(), layering);
        double[] amounts = amounts(scene);
        int changes = space.candidates().changes(mix.lamps(), mix.size())
                + task.frame().changes(layering);
        Score score = judge.score(amounts, changes, space.candidates().watts(mix.lamps(), mix.size()));
        PlannedRig rig = new PlannedRig(
                lamps,
                covers(layering),
                takenDown(lamps),
                scene,
                fulfilments(amounts),
                score.loss(),
                changes,
                known(score.watts()),
                known(score.unevenness()));
        return new Verified(mix, rig, score);
    }

    private static Optional<Double> known(double amount) {
        return Double.isNaN(amount) ? Optional.empty() : Optional.of(amount);
    }

    private List<PlannedLamp> lamps(Mix mix) {
        List<PlannedLamp> lamps = new ArrayList<>();
        Stream.concat(
                        space.candidates().staying().stream(),
                        IntStream.of(mix.lamps()).mapToObj(space.candidates()::get))
                .forEach(candidate -> lamps.add(planned(candidate, lamps)));
        return lamps;
    }

    /** Each lamp has an id of its own: that of its option, with a number from the second on. */
    private static PlannedLamp planned(Candidate candidate, List<PlannedLamp> before) {
        String option = candidate.lamp().id();
        long same =
                before.stream().filter(lamp -> lamp.optionId().equals(option)).count();
        Lamp lamp = candidate.lamp(same == 0 ? option : option + " #" + (same + 1));
        return new PlannedLamp(option, candidate.place().map(HangingPlace::id), candidate.deed(), lamp);
    }

    private List<PlannedCover> covers(List<Integer> layering) {
        return IntStream.range(0, layering.size())
                .mapToObj(index -> planned(task.frame().covers().get(index), layering.get(index)))
                .toList();
    }

    private static PlannedCover planned(CoverChoice cover, int layers) {
        return new PlannedCover(cover.id(), cover.layersNow(), layers);
    }

    private List<String> takenDown(List<PlannedLamp> lamps) {
        List<String> hung = lamps.stream().map(PlannedLamp::optionId).toList();
        return task.options().stream()
                .filter(option -> option.origin() instanceof Origin.Hung)
                .map(LampOption::id)
                .filter(id -> !hung.contains(id))
                .toList();
    }

    private double[] amounts(Scene scene) {
        Cells cells = space.cells();
        Field field = Field.of(scene);
        double[] amounts = new double[cells.count()];
        for (int receiver = 0; receiver < cells.receivers().size(); receiver++) {
            var light = field.at(cells.receivers().get(receiver)).values();
            for (int cell = 0; cell < amounts.length; cell++) {
                if (cells.get(cell).receiver() == receiver) {
                    amounts[cell] = light.getOrDefault(cells.get(cell).quantity(), 0.0);
                }
            }
        }
        return amounts;
    }

    private List<Fulfilment> fulfilments(double[] amounts) {
        List<Fulfilment> all = new ArrayList<>();
        int cell = 0;
        for (Demand demand : task.demands()) {
            List<Fulfilment> each = new ArrayList<>();
            for (Receiver receiver : demand.receivers()) {
                each.add(Fulfilment.of(demand, receiver, amounts[cell++]));
            }
            all.add(each.stream().reduce(Fulfilment::worse).get());
        }
        return all;
    }
}
