package dapple.light.design;

import dapple.light.cover.Filter;
import dapple.light.field.Field;
import dapple.light.field.Receiver;
import dapple.light.field.Scene;
import dapple.light.quantity.Check;
import dapple.light.quantity.Quantity;
import java.util.ArrayList;
import java.util.List;

/**
 * One cover of a scene that may have more or fewer layers. Each number of layers is asked of the engine itself: a weave
 * passes less at a slant, and a cover may lie over a part of the lamps alone.
 *
 * @param cover index among the scene's filters
 * @param least fewest layers, 0 to take the cover away
 * @param most most layers, at most 100
 */
public record LayersTask(Scene scene, int cover, int least, int most, Receiver receiver, Quantity quantity) {
    public LayersTask {
        Check.within("cover", cover, 0, scene.filters().size() - 1.0, "");
        Check.within("least layers", least, 0, 100, "");
        Check.within("most layers", most, least, 100, "");
    }

    /** What each number of layers gives, fewest first. */
    List<AmountThroughLayers> amounts() {
        List<AmountThroughLayers> amounts = new ArrayList<>();
        for (int layers = least; layers <= most; layers++) {
            double amount = Field.of(at(layers)).at(receiver).values().getOrDefault(quantity, 0.0);
            amounts.add(new AmountThroughLayers(layers, amount));
        }
        return amounts;
    }

    /** The scene with another number of layers. */
    public Scene at(int layers) {
        List<Filter> filters = new ArrayList<>();
        for (int index = 0; index < scene.filters().size(); index++) {
            if (index != cover) {
                filters.add(scene.filters().get(index));
            } else {
                CoverChoice.with(scene.filters().get(index), layers).ifPresent(filters::add);
            }
        }
        return new Scene(scene.accuracy(), scene.lamps(), filters, scene.solids());
    }
}
