package dapple.round;

import dapple.light.quantity.Quantity;
import dapple.reading.Outcome;
import java.util.Optional;

/**
 * One thing to read on a walk.
 *
 * @param outcome why it was not read, where that was noted and it was not read since
 */
public record RoundStep(long pointId, String point, Quantity quantity, boolean isDone, Optional<Outcome> outcome) {}
