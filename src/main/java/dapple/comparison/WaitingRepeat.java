package dapple.comparison;

import dapple.light.quantity.Quantity;
import java.time.Duration;
import java.time.Instant;
import java.util.UUID;

/** A reading that waits to be read again by somebody else. What was read first is not told. */
record WaitingRepeat(
        long enclosureId,
        String enclosure,
        String room,
        long pointId,
        String point,
        String place,
        Quantity quantity,
        String meter,
        Instant takenAt) {
    /** Lamps and warmth change: a later reading is not the same one once more (ours). */
    static final Duration WINDOW = Duration.ofHours(24);

    public Instant until() {
        return takenAt.plus(WINDOW);
    }

    /** Where it is read, in a visit of its own. */
    public String path() {
        return "/enclosures/" + enclosureId + "/visits/" + UUID.randomUUID() + "/points/" + pointId + "?quantity="
                + quantity;
    }
}
