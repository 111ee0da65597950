package dapple.practice;

import java.time.Instant;

/**
 * What a meter showed under its reference lamp.
 *
 * @param amount as displayed, in the unit of the meter's quantity
 */
public record LampReading(long lampId, long meterId, double amount, Instant at) {}
