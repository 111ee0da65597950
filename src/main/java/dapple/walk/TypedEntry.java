package dapple.walk;

import dapple.enclosure.Facing;
import dapple.light.metrology.RepeatsTaken;
import dapple.light.quantity.Quantity;
import dapple.reading.CoverSaid;
import dapple.reading.Outcome;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What a phone sends: a reading of a step, why there is none, a note on the visit, how its cover was, or where a photo is from. Nothing in it is
 * trusted; anything may be missing.
 *
 * @param personId who typed it
 * @param repeats the amounts typed one after the other, where repeats were asked for
 * @param stopped whether the last of them was over the ceiling and counts alone
 * @param takenAt by the phone's clock
 * @param sentAt by the same clock, when it was sent: so its error is known
 * @param secondsAtPoint how long who typed it stood there
 */
record TypedEntry(
        @Nullable UUID key,
        @Nullable UUID visitKey,
        @Nullable Long personId,
        @Nullable Long enclosureId,
        @Nullable Long pointId,
        @Nullable Quantity quantity,
        @Nullable Long meterId,
        @Nullable BigDecimal amount,
        @Nullable Facing held,
        @Nullable Outcome outcome,
        @Nullable List<BigDecimal> repeats,
        @Nullable Boolean stopped,
        @Nullable String note,
        @Nullable CoverSaid cover,
        @Nullable Instant takenAt,
        @Nullable Instant sentAt,
        @Nullable Double secondsAtPoint) {

    boolean isWhole() {
        return isPlaced() && (isOfVisit() || isOfStep());
    }

    /** Whether it names its place, person and times. */
    boolean isPlaced() {
        return key != null
                && visitKey != null
                && personId != null
                && enclosureId != null
                && takenAt != null
                && sentAt != null
                && (secondsAtPoint == null || Double.isFinite(secondsAtPoint));
    }

    /** Whether it speaks of the visit as a whole. */
    boolean isOfVisit() {
        return note != null || cover != null;
    }

    private boolean isOfStep() {
        return pointId != null && quantity != null && (outcome != null || (amount != null && meterId != null));
    }

    /** Every number in it. */
    List<BigDecimal> amounts() {
        return Stream.concat(
                        Stream.ofNullable(amount), Stream.ofNullable(repeats).flatMap(List::stream))
                .toList();
    }

    /**
     * The repeats, if any.
     *
     * @throws IllegalArgumentException if there are none or too many in a list of them, or they are below 0
     */
    Optional<RepeatsTaken> taken() {
        return Optional.ofNullable(repeats)
                .map(typed -> typed.stream().map(BigDecimal::doubleValue).toList())
                .map(RepeatsTaken::new);
    }

    boolean isStopped() {
        return stopped != null && stopped;
    }
}
