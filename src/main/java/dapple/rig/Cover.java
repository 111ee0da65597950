package dapple.rig;

import dapple.light.cover.Filter.Rectangle;
import dapple.light.quantity.Check;
import java.util.Optional;

/**
 * A mesh or sheet that lies level between lamps and animals.
 *
 * @param heightMetres of its plane above the floor; empty: measured only
 * @param over what it covers; empty: all of the plane
 * @param layers 1 to 100
 */
public record Cover(
        String name, Optional<Double> heightMetres, Optional<Rectangle> over, CoverMaterial material, int layers) {
    public Cover {
        Check.within("layers", layers, 1, 100, "");
    }

    public Cover withLayers(int newLayers) {
        return new Cover(name, heightMetres, over, material, newLayers);
    }
}
