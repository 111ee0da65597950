package dapple.reading;

import dapple.enclosure.Facing;
import dapple.light.metrology.RepeatsTaken;
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
 * @param repeats what was typed one after the other, where repeats were asked for; then the amount is what counts of them
 */
public record Entry(
        UUID key,
        VisitPlace place,
        long meterId,
        double amount,
        Instant takenAt,
        Optional<Facing> held,
        Optional<RepeatsTaken> repeats) {
    public Entry {
        Check.within("reading", amount, -Double.MAX_VALUE, Double.MAX_VALUE, "");
    }

    /** Of one amount. */
    public Entry(UUID key, VisitPlace place, long meterId, double amount, Instant takenAt, Optional<Facing> held) {
        this(key, place, meterId, amount, takenAt, held, Optional.empty());
    }

    /** The same as what counts of several amounts. */
    public Entry repeated(RepeatsTaken taken, double counting) {
        return new Entry(key, place, meterId, counting, takenAt, held, Optional.of(taken));
    }

    /** Of one amount with the sensor held as the point says. */
    public Entry(UUID key, VisitPlace place, long meterId, double amount, Instant takenAt) {
        this(key, place, meterId, amount, takenAt, Optional.empty());
    }
}
