package dapple.prediction;

import dapple.enclosure.InnerSize;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Quantity;
import dapple.light.zone.Zone;
import java.util.List;
import java.util.Optional;

/** What falls on one place, on the plane that has most of a quantity there. */
public sealed interface LightHere {
    /**
     * Light that is known.
     *
     * @param facing the direction of that plane
     * @param lamps what each lamp gives on that same plane, so that all together are the amount; the most first
     * @param zone which it is; empty without a target
     */
    record Lit(Predicted predicted, Vec facing, List<FromLamp> lamps, Optional<Zone> zone) implements LightHere {
        public Lit {
            lamps = List.copyOf(lamps);
        }
    }

    /**
     * One lamp's part.
     *
     * @param amount in the quantity's unit
     * @param share of the whole, 0 to 1; 0 in the dark
     */
    record FromLamp(String lamp, double amount, double share) {}

    /** Nothing can be said of the place. */
    record Nothing(Why why) implements LightHere {}

    /** Why nothing can be said. */
    enum Why {
        /** The quantity is not predicted in this enclosure. */
        NOT_PREDICTED,
        /** The place lies outside the enclosure. */
        OUTSIDE,
        /** The place lies in a piece of furniture or on a lamp. */
        NOT_OPEN
    }

    /** The light at a place of an enclosure, held against the target that is shown. */
    static LightHere at(EnclosureScene scene, Quantity quantity, Vec place) {
        if (!scene.rig().quantities().contains(quantity)) {
            return new Nothing(Why.NOT_PREDICTED);
        }
        if (scene.size().filter(size -> isInside(size, place)).isEmpty()) {
            return new Nothing(Why.OUTSIDE);
        }
        return PredictedLight.of(scene.rig())
                .here(place, quantity)
                .<LightHere>map(here ->
                        new Lit(here.predicted(), here.facing(), here.lamps(), zone(scene, quantity, here.predicted())))
                .orElse(new Nothing(Why.NOT_OPEN));
    }

    private static boolean isInside(InnerSize size, Vec place) {
        return place.x() >= 0
                && place.x() <= size.widthMetres()
                && place.y() >= 0
                && place.y() <= size.depthMetres()
                && place.z() >= 0
                && place.z() <= size.heightMetres();
    }

    private static Optional<Zone> zone(EnclosureScene scene, Quantity quantity, Predicted predicted) {
        return scene.shown().flatMap(need -> need.zones(quantity)).map(target -> target.of(predicted.amount()));
    }
}
