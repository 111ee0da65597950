package dapple.draft;

import java.time.Instant;
import java.util.Optional;

/**
 * A draft rig of an enclosure.
 *
 * @param closedAt when it was discarded or installed; empty: in work
 * @param installedBy the change of the rig that made it the installed one
 */
public record DraftFacts(
        long id,
        long enclosureId,
        long version,
        String name,
        DraftRig rig,
        Said made,
        Said changed,
        Optional<Instant> closedAt,
        Optional<Long> installedBy) {
    public boolean isOpen() {
        return closedAt.isEmpty();
    }

    /** Who did something, and when. */
    public record Said(long personId, Instant at) {}
}
