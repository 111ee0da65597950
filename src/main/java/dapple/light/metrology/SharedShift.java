package dapple.light.metrology;

import java.time.Instant;

/**
 * All meters read less or more from one week on: the lamps, their supply, the house or the way of reading, not a meter.
 *
 * @param found when that became certain enough
 * @param weekFrom beginning of the likeliest week
 * @param shift ln
 */
public record SharedShift(Instant found, Instant weekFrom, Change shift) {}
