package dapple.comparison;

import java.time.Instant;

/**
 * A reading that still stands, of one meter at one point.
 *
 * @param amount with the factor of the meter's calibration, in the unit of the quantity, at least 0
 */
public record MeterRead(long pointId, long meterId, Instant at, double amount) {}
