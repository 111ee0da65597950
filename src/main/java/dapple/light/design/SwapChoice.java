package dapple.light.design;

import dapple.light.field.Scene;
import dapple.light.quantity.Quantity;
import java.util.List;
import java.util.Set;

/**
 * Another lamp in the same place, and what it changes.
 *
 * @param scene with the other lamp, under the id of the one that goes
 * @param demands in the order of the task
 * @param changed quantities that are more than a tenth more or less than before at any receiver
 * @param meanFactor how far all amounts are from those before: e to the mean of |ln(after/before)|, 1 if nothing changes
 */
public record SwapChoice(
        String optionId, Scene scene, List<Fulfilment> demands, Set<Quantity> changed, double meanFactor) {
    public SwapChoice {
        demands = List.copyOf(demands);
        changed = Set.copyOf(changed);
    }

    public boolean isMet() {
        return demands.stream().allMatch(Fulfilment::isMet);
    }

    /** Sum of ln of the factors that are missing. */
    double violation() {
        return demands.stream()
                .filter(demand -> !demand.isMet())
                .mapToDouble(demand -> Score.violation(demand.missingFactor()))
                .sum();
    }
}
