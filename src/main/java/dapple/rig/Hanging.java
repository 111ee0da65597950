package dapple.rig;

import java.util.Optional;

/**
 * How a lamp hangs.
 *
 * @param place what the place is called, such as "basking tube"
 * @param mount where exactly; empty: measured only
 * @param timer when it burns; empty: not known
 * @param circuitId the circuit that feeds it; empty: not known
 */
public record Hanging(String place, Optional<Mount> mount, Optional<DailyTimer> timer, Optional<Long> circuitId) {
    Hanging movedTo(String newPlace, Optional<Mount> newMount) {
        return new Hanging(newPlace, newMount, timer, circuitId);
    }

    Hanging timed(Optional<DailyTimer> newTimer, Optional<Long> newCircuitId) {
        return new Hanging(place, mount, newTimer, newCircuitId);
    }
}
