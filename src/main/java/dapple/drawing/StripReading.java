package dapple.drawing;

import dapple.light.judging.MeasuredAmount;
import dapple.light.judging.State;
import java.time.Instant;

/**
 * A reading of the point and quantity of a strip.
 *
 * @param state by the target of its day
 * @param words what somebody reads at the disc: day, amount with unit, interval, state
 */
public record StripReading(Instant at, MeasuredAmount measured, State state, String words) {}
