package dapple.practice;

import java.time.Instant;

/**
 * What a meter showed in a check.
 *
 * @param amount in the unit of the meter's quantity
 */
public record Shown(double amount, Instant at, String note) {}
