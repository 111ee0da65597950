package dapple.reading;

import java.time.Instant;
import java.util.Optional;

/**
 * A lamp that had not burnt for the warm-up time when something was read under it, by its timer.
 *
 * @param readyAt when it has; empty: its timer had it off
 */
public record ColdLamp(String tag, Optional<Instant> readyAt) {
    public boolean isOff() {
        return readyAt.isEmpty();
    }
}
