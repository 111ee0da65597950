package dapple.light.design;

import dapple.light.field.Scene;
import java.util.List;
import java.util.Optional;

/**
 * A rig as it would be, and what the engine itself says of it.
 *
 * @param takenDown ids of the options that hang now and would not
 * @param scene the rig for the engine
 * @param demands in the order of the task
 * @param loss sum of the demands' losses: 0 where all lie well inside their bands
 * @param changes lamps taken down, moved, hung, bought, and covers changed; to buy and to hang a lamp are two
 * @param powerWatts of all lamps, W; empty if that of any is not known
 * @param unevenness of the fall of light along the way, 0 where it is even, see {@link Way}; empty where nobody asks
 */
public record PlannedRig(
        List<PlannedLamp> lamps,
        List<PlannedCover> covers,
        List<String> takenDown,
        Scene scene,
        List<Fulfilment> demands,
        double loss,
        int changes,
        Optional<Double> powerWatts,
        Optional<Double> unevenness) {
    public PlannedRig {
        lamps = List.copyOf(lamps);
        covers = List.copyOf(covers);
        takenDown = List.copyOf(takenDown);
        demands = List.copyOf(demands);
    }

    public boolean isMet() {
        return demands.stream().allMatch(Fulfilment::isMet);
    }

    public List<Fulfilment> unmet() {
        return demands.stream().filter(demand -> !demand.isMet()).toList();
    }
}
