package dapple.comparison;

import dapple.light.quantity.Quantity;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;

/**
 * That two or more meters of a quantity are at hand, and when they are to be compared.
 *
 * @param on from which day on; empty: at once, as they never were. Nobody knows before whether two readings differ by their
 *     light or by their meters.
 * @param underWay the comparison that has been begun
 */
public record ComparisonDue(Quantity quantity, Optional<LocalDate> on, Optional<Long> underWay) {
    /** A quarter (common practice, no source). */
    static final int WEEKS = 13;

    static ComparisonDue of(Quantity quantity, Optional<Instant> newest, Optional<Long> underWay, ZoneId zone) {
        Optional<LocalDate> on =
                newest.map(ended -> LocalDate.ofInstant(ended, zone).plusWeeks(WEEKS));
        return new ComparisonDue(quantity, on, underWay);
    }

    /** Whether there is something to do on a day. */
    public boolean isDueOn(LocalDate day) {
        return underWay.isPresent() || on.filter(due -> due.isAfter(day)).isEmpty();
    }
}
