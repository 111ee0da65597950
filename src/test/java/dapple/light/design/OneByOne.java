package dapple.light.design;

import dapple.light.quantity.Quantity;
import dapple.light.source.Lamp;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Every rig of a planted task one by one: each lamp absent or at each place, each number of layers; the light of each lamp
 * asked of the engine alone and added up, so that only receivers on a plane of their own will do. Shares nothing with the
 * search but what a demand is.
 */
final class OneByOne {
    /** The least loss of the rigs that meet every demand; and with fewest changes, and with least power. */
    record Best(double loss, int changes, double lossOfFewest, double watts, double lossOfLeast) {
        static final Best NONE = new Best(1e9, 1_000_000, 1e9, 1e9, 1e9);

        Best and(double otherLoss, int otherChanges, double otherWatts) {
            boolean isFewer = otherChanges < changes || (otherChanges == changes && otherLoss < lossOfFewest);
            boolean isLess = otherWatts < watts || (otherWatts == watts && otherLoss < lossOfLeast);
            return new Best(
                    Math.min(loss, otherLoss),
                    isFewer ? otherChanges : changes,
                    isFewer ? otherLoss : lossOfFewest,
                    isLess ? otherWatts : watts,
                    isLess ? otherLoss : lossOfLeast);
        }
    }

    private final ProposalTask task;
    private Best best = Best.NONE;

    private OneByOne(ProposalTask task) {
        this.task = task;
    }

    static Best of(ProposalTask task) {
        OneByOne search = new OneByOne(task);
        for (int layers : task.frame().covers().get(0).layers()) {
            search.search(layers);
        }
        return search.best;
    }

    /** A lamp at a place: what it gives at every receiver of every demand, in order. */
    private record Hung(String place, List<double[]> light, int changes, double watts) {}

    private void search(int layers) {
        List<List<Hung>> ways = new ArrayList<>();
        for (LampOption option : task.options()) {
            List<Hung> hung = new ArrayList<>();
            for (HangingPlace place : task.places()) {
                Lamp lamp = option.poses().get(0).at(place.at());
                hung.add(new Hung(
                        place.id(),
                        light(lamp, layers),
                        changes(option),
                        option.powerWatts().orElse(0.0)));
            }
            if (option.origin() instanceof Origin.Hung now) {
                hung.add(new Hung(
                        "now", light(now.lamp(), layers), 0, option.powerWatts().orElse(0.0)));
            }
            ways.add(hung);
        }
        int changed = layers == 1 ? 0 : 1;
        choose(ways, 0, List.of(), changed);
    }

    private static int changes(LampOption option) {
        return option.origin() instanceof Origin.ToBuy ? 2 : 1;
    }

    private List<double[]> light(Lamp lamp, int layers) {
        return task.demands().stream()
                .map(demand -> demand.receivers().stream()
                        .mapToDouble(receiver -> amount(
                                PlantedTask.light(task.frame().scene(List.of(lamp), List.of(layers)), receiver),
                                demand.quantity()))
                        .toArray())
                .toList();
    }

    private static double amount(Map<Quantity, Double> light, Quantity quantity) {
        return light.getOrDefault(quantity, 0.0);
    }

    private void choose(List<List<Hung>> ways, int option, List<Hung> hung, int changes) {
        if (option == ways.size()) {
            judge(hung, changes);
            return;
        }
        boolean hangsNow = task.options().get(option).origin() instanceof Origin.Hung;
        choose(ways, option + 1, hung, changes + (hangsNow ? 1 : 0));
        if (hung.size() < task.mostLamps()) {
            for (Hung one : ways.get(option)) {
                if (hung.stream().noneMatch(other -> isSamePlace(one.place(), other.place()))) {
                    List<Hung> more = new ArrayList<>(hung);
                    more.add(one);
                    choose(ways, option + 1, more, changes + one.changes());
                }
            }
        }
    }

    /** The lamp that hangs now hangs at the first place. */
    private static boolean isSamePlace(String one, String other) {
        return one.replace("now", "place 0").equals(other.replace("now", "place 0"));
    }

    private void judge(List<Hung> hung, int changes) {
        double loss = 0;
        for (int demand = 0; demand < task.demands().size(); demand++) {
            Demand wanted = task.demands().get(demand);
            double worst = 0;
            for (int receiver = 0; receiver < wanted.receivers().size(); receiver++) {
                double amount = 0;
                for (Hung lamp : hung) {
                    amount += lamp.light().get(demand)[receiver];
                }
                if (!wanted.isMetBy(amount)) {
                    return;
                }
                worst = Math.max(worst, wanted.loss(amount));
            }
            loss += worst;
        }
        best = best.and(loss, changes, hung.stream().mapToDouble(Hung::watts).sum());
    }
}
