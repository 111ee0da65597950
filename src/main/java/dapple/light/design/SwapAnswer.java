package dapple.light.design;

import dapple.light.field.Receiver;
import dapple.light.field.Scene;
import dapple.light.quantity.Quantity;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Which lamp in the place of another changes least.
 *
 * @param choices first those that meet every demand, by fewest changed quantities and then by the nearest amounts; then
 *     those that do not, the least missed first
 */
public record SwapAnswer(List<SwapChoice> choices) {
    /** A quantity counts as changed from this factor on: a tenth, about what a hand-held meter tells. Our own choice. */
    private static final double CHANGED = 1.1;

    /** A factor beyond this one counts as this one, so that light that comes or goes has a number. */
    private static final double MOST_FACTOR = 100;

    public SwapAnswer {
        choices = List.copyOf(choices);
    }

    /** The one that meets every demand with least change; empty if none does. */
    public Optional<SwapChoice> best() {
        return choices.stream().findFirst().filter(SwapChoice::isMet);
    }

    public static SwapAnswer of(SwapTask task) {
        List<Map<Quantity, Double>> before = task.light(task.scene());
        List<SwapChoice> choices = new ArrayList<>();
        for (LampOption option : task.options()) {
            for (Pose pose : option.poses()) {
                task.with(pose).forEach(scene -> choices.add(choice(task, option.id(), scene, before)));
            }
        }
        choices.sort(Comparator.comparing((SwapChoice choice) -> !choice.isMet())
                .thenComparingDouble(SwapChoice::violation)
                .thenComparingInt(choice -> choice.changed().size())
                .thenComparingDouble(SwapChoice::meanFactor));
        return new SwapAnswer(choices);
    }

    private static SwapChoice choice(SwapTask task, String optionId, Scene scene, List<Map<Quantity, Double>> before) {
        List<Map<Quantity, Double>> after = task.light(scene);
        Set<Quantity> changed = EnumSet.noneOf(Quantity.class);
        double logs = 0;
        Set<Quantity> quantities = SwapTask.quantities(before, after);
        for (Quantity quantity : quantities) {
            for (int receiver = 0; receiver < before.size(); receiver++) {
                double factor = factor(before.get(receiver), after.get(receiver), quantity);
                logs += Math.log(factor);
                if (factor > CHANGED) {
                    changed.add(quantity);
                }
            }
        }
        double mean = Math.exp(logs / Math.max(1, quantities.size() * before.size()));
        return new SwapChoice(optionId, scene, fulfilments(task, after), changed, mean);
    }

    /** By what factor more or less there is than before, at least 1. */
    private static double factor(Map<Quantity, Double> before, Map<Quantity, Double> after, Quantity quantity) {
        double one = before.getOrDefault(quantity, 0.0);
        double other = after.getOrDefault(quantity, 0.0);
        double more = Math.max(one, other);
        return more > 0 ? Math.min(MOST_FACTOR, more / Math.min(one, other)) : 1;
    }

    private static List<Fulfilment> fulfilments(SwapTask task, List<Map<Quantity, Double>> light) {
        List<Receiver> receivers = task.receivers();
        return task.demands().stream()
                .map(demand -> demand.receivers().stream()
                        .map(receiver -> Fulfilment.of(
                                demand,
                                receiver,
                                light.get(receivers.indexOf(receiver)).getOrDefault(demand.quantity(), 0.0)))
                        .reduce(Fulfilment::worse)
                        .get())
                .toList();
    }
}
