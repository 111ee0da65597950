package dapple.photo;

import dapple.reading.Visitor;
import java.time.Instant;
import java.util.Optional;

/**
 * A photo of a visit, without its pictures.
 *
 * @param at when it was taken
 * @param removal that its pictures were deleted
 */
public record PhotoFacts(
        long id,
        long visitId,
        long enclosureId,
        int widthPixels,
        int heightPixels,
        Instant at,
        long personId,
        Optional<Removal> removal) {

    public boolean isThere() {
        return removal.isEmpty();
    }

    /** Whether somebody may remove it: who took it, or a supervisor. */
    boolean mayBeRemovedBy(Visitor visitor) {
        return visitor.supervises() || visitor.personId() == personId;
    }

    /** When its pictures were deleted, by whom and why. */
    public record Removal(Instant at, long personId, String reason) {}
}
