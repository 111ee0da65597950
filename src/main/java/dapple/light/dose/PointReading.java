package dapple.light.dose;

import dapple.light.judging.MeasuredAmount;
import dapple.light.judging.PointRole;
import dapple.light.judging.State;
import java.time.Instant;

/** A reading of the UV index where the animal stayed, with what it was judged. */
public record PointReading(Instant at, PointRole role, MeasuredAmount index, State judged) {}
