package dapple.agreement;

import dapple.light.metrology.Change;
import dapple.light.quantity.Quantity;
import java.time.Instant;
import java.util.Optional;
import java.util.Set;

/**
 * What one computation tells of a meter, or of all.
 *
 * @param meter none: of all meters of the quantity
 * @param foundAt end of the week that made it certain enough
 * @param weekFrom beginning of the likeliest week; of a drift the first reading
 * @param change ln, of a drift a year
 * @param lnNow all of it up to the newest reading
 * @param doubts other meters that may have changed the other way instead
 * @param maybeLamps whether all lamps may have changed instead
 */
record Told(
        Quantity quantity,
        FindingKind kind,
        Optional<MeterKey> meter,
        Instant foundAt,
        Instant weekFrom,
        Change change,
        double lnNow,
        Set<Long> doubts,
        boolean maybeLamps) {
    Told {
        doubts = Set.copyOf(doubts);
    }
}
