package dapple.reading;

import dapple.enclosure.Facing;
import dapple.light.quantity.Check;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/**
 * A reading to record.
 *
 * @param key made where it was typed: the same key is stored once, however often it is sent
 * @param amount as displayed, in the unit of the meter's quantity
 * @param held how the sensor was held, where it was not as the point says
 */
public record Entry(UUID key, VisitPlace place, long meterId, double amount, Instant takenAt, Optional<Facing> held) {
    public Entry {
        Check.within("reading", amount, -Double.MAX_VALUE, Double.MAX_VALUE, "");
    }

    /** With the sensor held as the point says. */
    public Entry(UUID key, VisitPlace place, long meterId, double amount, Instant takenAt) {
        this(key, place, meterId, amount, takenAt, Optional.empty());
    }
}
