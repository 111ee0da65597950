package dapple.rig;

import java.util.Optional;

/**
 * How a lamp hangs.
 *
 * @param place what the place is called, such as "basking tube"
 * @param mount where exactly; empty: measured only
 * @param timer when it burns; empty: not known
 * @param circuitId the circuit that feeds it; empty: not known
 * @param gear what stands between the circuit and the lamp
 */
public record Hanging(
        String place, Optional<Mount> mount, Optional<LampTimer> timer, Optional<Long> circuitId, Gear gear) {
    /** Nothing is known of its gear. */
    public Hanging(String place, Optional<Mount> mount, Optional<LampTimer> timer, Optional<Long> circuitId) {
        this(place, mount, timer, circuitId, Gear.UNKNOWN);
    }

    Hanging movedTo(String newPlace, Optional<Mount> newMount) {
        return new Hanging(newPlace, newMount, timer, circuitId, gear);
    }

    Hanging timed(Optional<LampTimer> newTimer, Optional<Long> newCircuitId) {
        return new Hanging(place, mount, newTimer, newCircuitId, gear);
    }

    public Hanging with(Gear newGear) {
        return new Hanging(place, mount, timer, circuitId, newGear);
    }
}
