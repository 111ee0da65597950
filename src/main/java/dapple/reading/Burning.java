package dapple.reading;

import dapple.light.quantity.Quantity;
import dapple.rig.FittedLamp;
import dapple.rig.LampTimer;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/**
 * How the lamps of an enclosure burnt around a visit, by their timers; of an unknown timer nothing is said.
 *
 * @param hung from the warm-up time before the visit until its end, oldest first
 */
record Burning(List<FittedLamp> hung, Duration warmUp, ZoneId zone) {
    Burning {
        hung = List.copyOf(hung);
    }

    /** The lamps that give of what was read, as far as is usual of their class, and were off or not warm yet. */
    List<ColdLamp> coldAt(Instant at, Quantity quantity) {
        return hung.stream()
                .filter(lamp -> lamp.lampClass().gives(quantity) && hangs(lamp, at))
                .flatMap(lamp -> lamp.timer().flatMap(timer -> cold(lamp, timer, at)).stream())
                .toList();
    }

    private Optional<ColdLamp> cold(FittedLamp lamp, LampTimer timer, Instant at) {
        Optional<Instant> readyAt =
                timer.burningSince(hungSince(lamp), at, zone).map(on -> on.plus(warmUp));
        return readyAt.filter(ready -> !ready.isAfter(at)).isPresent()
                ? Optional.empty()
                : Optional.of(new ColdLamp(lamp.tag(), readyAt));
    }

    private static boolean hangs(FittedLamp lamp, Instant at) {
        return !lamp.from().isAfter(at)
                && lamp.to().filter(to -> !to.isAfter(at)).isEmpty();
    }

    /** Moved or timed anew it burns on. */
    private Instant hungSince(FittedLamp lamp) {
        return before(lamp).map(this::hungSince).orElse(lamp.from());
    }

    private Optional<FittedLamp> before(FittedLamp lamp) {
        return hung.stream()
                .filter(other -> other.tag().equals(lamp.tag()) && other.to().equals(Optional.of(lamp.from())))
                .findFirst();
    }
}
