package dapple.comparison;

import dapple.light.metrology.Repeats;
import dapple.light.quantity.Quantity;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * A reading that was drawn to be read again.
 *
 * @param where enclosure and point
 * @param resolution step of the display of the first meter, in the unit of the quantity
 * @param second empty: nobody else has read it in its time
 */
record RepeatAsked(String where, Quantity quantity, double resolution, Read first, Optional<Read> second) {
    /**
     * One of the two readings.
     *
     * @param amount as displayed, in the unit of the quantity
     */
    record Read(double amount, long meterId, long personId, Instant at) {}

    /** Whether it may still be read at an instant. */
    boolean isWaiting(Instant now) {
        return second.isEmpty() && !first.at().isBefore(WaitingRepeats.since(now));
    }

    /** Whether two people read with one meter: what two meters differ by says nothing of people. */
    public boolean isByOneMeter() {
        return second.filter(again -> again.meterId() == first.meterId()).isPresent();
    }

    /** Second over first. */
    public Optional<Double> ratio() {
        return second.map(again -> again.amount() / first.amount());
    }

    /** Whether they are no further apart than 15 % of their median, or one step of the display. */
    public boolean agrees() {
        return repeats().filter(both -> !both.asksAgain(resolution)).isPresent();
    }

    /** (larger − smaller)/median, a share. */
    Optional<Double> spread() {
        return repeats().map(both -> both.range() / both.median());
    }

    private Optional<Repeats> repeats() {
        return second.map(again -> new Repeats(List.of(first.amount(), again.amount())));
    }
}
