package dapple.site;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * What was done to a thing at once.
 *
 * @param personId who did it; none: the program itself
 */
public record HistoryEntry(Instant at, Optional<Long> personId, Kind kind, List<FieldChange> changes) {
    /** What was done. */
    public enum Kind {
        ENTERED,
        CHANGED,
        REMOVED
    }
}
