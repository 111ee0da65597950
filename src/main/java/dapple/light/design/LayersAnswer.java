package dapple.light.design;

import dapple.light.judging.Band;
import java.util.Comparator;
import java.util.List;

/**
 * How many layers bring the light into a band, or nearest to it.
 *
 * @param best the number that lies best in the band; of those outside, the one nearest to it by its factor, and of equal
 *     ones the fewest layers
 * @param isMet whether the best lies in the band
 * @param all every number that was asked for, fewest first
 */
public record LayersAnswer(AmountThroughLayers best, boolean isMet, List<AmountThroughLayers> all) {
    public LayersAnswer {
        all = List.copyOf(all);
    }

    public static LayersAnswer of(LayersTask task, Band band) {
        Demand demand = new Demand("layers", Demand.Kind.BAND, task.quantity(), List.of(task.receiver()), band);
        List<AmountThroughLayers> all = task.amounts();
        Comparator<AmountThroughLayers> byStrain =
                Comparator.comparingDouble(through -> demand.missingFactor(through.amount()));
        AmountThroughLayers best = all.stream()
                .min(byStrain.thenComparingDouble(through -> demand.strain(through.amount())))
                .get();
        return new LayersAnswer(best, demand.isMetBy(best.amount()), all);
    }
}
