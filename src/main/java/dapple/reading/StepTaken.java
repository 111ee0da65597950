package dapple.reading;

import dapple.light.quantity.Quantity;
import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * That something was read at a point as asked and still stands, or why it was not.
 *
 * @param quantity empty: the whole point was not read
 * @param outcome empty: it was read
 */
public record StepTaken(long pointId, Optional<Quantity> quantity, Instant at, Optional<Outcome> outcome) {
    /** Of what the queries name. */
    StepTaken(long pointId, @Nullable Quantity quantity, Instant at, @Nullable Outcome outcome) {
        this(pointId, Optional.ofNullable(quantity), at, Optional.ofNullable(outcome));
    }

    StepTaken(long pointId, Quantity quantity, Instant at) {
        this(pointId, Optional.of(quantity), at, Optional.empty());
    }

    public boolean isUnread() {
        return outcome.isPresent();
    }

    /** Whether it speaks of a quantity at a point. */
    public boolean isOf(long point, Quantity asked) {
        return pointId == point && quantity.map(asked::equals).orElse(true);
    }
}
