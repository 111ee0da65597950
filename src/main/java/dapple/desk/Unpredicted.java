package dapple.desk;

import dapple.light.quantity.Quantity;
import dapple.prediction.EnclosureScene;
import java.util.ArrayList;
import java.util.List;

/** Why something of the light in an enclosure is not shown. */
public enum Unpredicted {
    /** The enclosure has no size: there is nothing to draw in. */
    NO_SIZE,
    /** Nothing is recorded that hangs there. */
    NO_LAMPS,
    /** What hangs there is not known well enough. */
    NO_UV_INDEX,
    NOBODY,
    NO_TARGET,
    /** Nobody's body was measured: whether one fits cannot be said. */
    NO_BODY,
    NO_BASKING_POINT;

    public static List<Unpredicted> of(EnclosureScene scene) {
        List<Unpredicted> why = new ArrayList<>();
        if (scene.size().isEmpty()) {
            why.add(NO_SIZE);
        }
        if (scene.rig().rig().fittings().isEmpty()) {
            why.add(NO_LAMPS);
        } else if (!scene.rig().quantities().contains(Quantity.UV_INDEX)) {
            why.add(NO_UV_INDEX);
        }
        if (scene.occupants().isEmpty()) {
            why.add(NOBODY);
        } else {
            ofAnimals(scene, why);
        }
        if (scene.baskingPoint().isEmpty()) {
            why.add(NO_BASKING_POINT);
        }
        return List.copyOf(why);
    }

    private static void ofAnimals(EnclosureScene scene, List<Unpredicted> why) {
        if (scene.shown().filter(need -> need.zones().isPresent()).isEmpty()) {
            why.add(NO_TARGET);
        }
        if (scene.bodyMetres().isEmpty()) {
            why.add(NO_BODY);
        }
    }
}
