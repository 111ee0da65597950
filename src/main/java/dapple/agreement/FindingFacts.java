package dapple.agreement;

import dapple.light.quantity.Interval;
import dapple.light.quantity.Quantity;
import java.time.Instant;
import java.util.Optional;
import java.util.Set;

/**
 * What was told of a meter, or of all at once.
 *
 * @param meterId none: of all meters of the quantity
 * @param foundAt end of the week whose readings made it certain enough
 * @param weekFrom beginning of the likeliest week; of a drift the first reading
 * @param lnChange natural logarithm, of a drift a year
 * @param lnInterval its 95 % interval
 * @param lnNow all of it up to the newest computation
 * @param doubts other meters that may have changed the other way instead
 * @param isMaybeLamps whether all lamps may have changed instead
 */
public record FindingFacts(
        long id,
        Quantity quantity,
        FindingKind kind,
        Optional<Long> meterId,
        Instant foundAt,
        Instant weekFrom,
        double lnChange,
        Interval lnInterval,
        double lnNow,
        Set<Long> doubts,
        boolean isMaybeLamps,
        Instant toldAt,
        Optional<Instant> takenBackAt,
        Optional<Settlement> settlement) {
    /**
     * How it was dealt with.
     *
     * @param by none: the meter was calibrated
     */
    public record Settlement(Instant at, Optional<Long> by, Optional<String> reason) {}

    public boolean isOpen() {
        return takenBackAt.isEmpty() && settlement.isEmpty();
    }

    /** Whether it reads less than before. */
    public boolean isLess() {
        return lnChange < 0;
    }

    public double percent() {
        return Percent.of(lnChange);
    }

    public double lowPercent() {
        return Percent.of(lnInterval.low());
    }

    public double highPercent() {
        return Percent.of(lnInterval.high());
    }

    public double percentNow() {
        return Percent.of(lnNow);
    }
}
