package dapple.door;

import java.time.Instant;
import java.util.Optional;

/**
 * A code on the door of an enclosure.
 *
 * @param replaced that another code has taken its place
 */
public record DoorFacts(long enclosureId, DoorCode code, Instant givenAt, long givenBy, Optional<Replaced> replaced) {

    /** Whether it opens the door: no other has taken its place. */
    public boolean counts() {
        return replaced.isEmpty();
    }

    /** When a new code took its place, by whom and why. */
    public record Replaced(Instant at, long personId, String reason) {}
}
