package dapple.rig;

import dapple.light.cover.Filter;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Quantity;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** A cover as the engine sees it. */
final class CoverInScene {
    private CoverInScene() {}

    static boolean names(Cover cover, Quantity quantity) {
        return !(cover.material() instanceof CoverMaterial.Passing known)
                || known.byQuantity().containsKey(quantity);
    }

    /** The filter; empty if its height is not known. */
    static Optional<Filter> filter(Cover cover) {
        return cover.heightMetres().map(height -> filter(cover, plane(cover, height)));
    }

    private static Filter.Plane plane(Cover cover, double height) {
        return Filter.Plane.of(new Vec(0, 0, height), Vec.UP, cover.over());
    }

    private static Filter filter(Cover cover, Filter.Plane plane) {
        if (cover.material() instanceof CoverMaterial.Weave weave) {
            return new Filter.Mesh(plane, weave.wireMetres(), weave.pitchMetres(), cover.layers());
        }
        CoverMaterial.Passing known = (CoverMaterial.Passing) cover.material();
        Map<Quantity, Double> shares = known.byQuantity().entrySet().stream()
                .collect(Collectors.toMap(
                        Map.Entry::getKey, entry -> entry.getValue().share()));
        return new Filter.Measured(plane, shares, cover.layers());
    }
}
