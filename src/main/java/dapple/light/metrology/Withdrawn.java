package dapple.light.metrology;

import java.time.Instant;
import java.util.List;

/**
 * A finding that later readings did not bear out.
 *
 * @param meters one, or all of them for a shared shift
 * @param found when it had become certain enough
 * @param until when it was no longer believed
 */
public record Withdrawn(List<String> meters, Instant found, Instant until) {
    public Withdrawn {
        meters = List.copyOf(meters);
    }
}
