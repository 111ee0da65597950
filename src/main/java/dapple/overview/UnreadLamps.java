package dapple.overview;

import dapple.rig.FittingFacts;
import dapple.rig.LampTimer;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/**
 * Which lamps wait for their first reading: until one is taken after the lamp was fitted, and at least the warm-up time
 * after its timer switched it on; of an unknown timer, until any is.
 *
 * @param read when something was read in the enclosure, the newest {@link #LOOKED_AT}
 */
record UnreadLamps(List<Instant> read, Duration warmUp, ZoneId zone) {
    /** A lamp that hung while so many readings were taken has been read. */
    static final int LOOKED_AT = 400;

    UnreadLamps {
        read = List.copyOf(read);
    }

    boolean holds(FittingFacts fitting, Instant since) {
        Optional<LampTimer> timer = fitting.hanging().timer();
        return read.stream()
                .filter(at -> !at.isBefore(since))
                .noneMatch(at -> timer.isEmpty() || isWarm(timer.get(), since, at));
    }

    private boolean isWarm(LampTimer timer, Instant since, Instant at) {
        return timer.burningSince(since, at, zone)
                .filter(on -> !on.plus(warmUp).isAfter(at))
                .isPresent();
    }
}
