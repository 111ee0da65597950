package dapple.light.field;

import dapple.light.cover.Filter;
import dapple.light.geometry.Solid;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Check;
import dapple.light.source.Lamp;
import java.util.List;

/**
 * What hangs and stands in an enclosure.
 *
 * @param accuracy largest relative error of the integration, 1e-6 to 0.05
 */
public record Scene(double accuracy, List<Lamp> lamps, List<Filter> filters, List<Solid> solids) {
    public static final double USUAL_ACCURACY = 0.001;

    public Scene {
        Check.within("accuracy", accuracy, 1e-6, 0.05, "");
        lamps = List.copyOf(lamps);
        filters = List.copyOf(filters);
        solids = List.copyOf(solids);
    }

    /** The index of the first solid that holds a place strictly inside, −1 if none does. */
    public int solidAround(Vec place) {
        for (int index = 0; index < solids.size(); index++) {
            if (solids.get(index).holds(place)) {
                return index;
            }
        }
        return -1;
    }
}
