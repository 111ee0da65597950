package dapple.desk;

import dapple.light.geometry.Vec;
import dapple.rig.Mount;
import java.util.Optional;

/** How a lamp with a length is turned in the place of one that may have none. */
public enum Turned {
    /** As the lamp that hung there. */
    AS_BEFORE(Optional.empty()),
    TO_THE_RIGHT(Optional.of(new Vec(1, 0, 0))),
    TO_THE_BACK(Optional.of(new Vec(0, 1, 0)));

    @SuppressWarnings("ImmutableEnumChecker") // a Vec never changes
    private final Optional<Vec> along;

    Turned(Optional<Vec> along) {
        this.along = along;
    }

    /** Empty where the lamp would point along its own length. */
    Optional<Mount> of(Mount before) {
        if (along.isEmpty()) {
            return Optional.of(before);
        }
        return along.filter(way -> !Mount.isParallel(before.aim(), way))
                .map(way -> new Mount(before.centre(), before.aim(), Optional.of(way)));
    }
}
