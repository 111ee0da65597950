package dapple.reading;

import dapple.light.quantity.Quantity;
import java.util.Comparator;

/** What one row of newest readings is of. */
record Read(long siteId, long pointId, Quantity quantity) {
    /** In which everybody takes them, so that no two wait for each other. */
    static final Comparator<Read> ORDER =
            Comparator.comparingLong(Read::pointId).thenComparing(Read::quantity);

    static Read of(Reading reading) {
        return new Read(reading.siteId(), reading.pointId(), reading.quantity());
    }
}
