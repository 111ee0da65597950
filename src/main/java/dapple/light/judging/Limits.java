package dapple.light.judging;

import dapple.light.quantity.Check;

/**
 * What readings of one quantity are judged by, for one species or animal.
 *
 * @param basking range at a basking point
 * @param shadeHigh the most that a shade point may have
 * @param ceiling what no reachable point may reach
 */
public record Limits(Band basking, double shadeHigh, double ceiling) {
    public Limits {
        Check.notNegative("shade limit", shadeHigh, "");
        Check.within("ceiling", ceiling, Math.max(shadeHigh, basking.low()), Double.MAX_VALUE, "");
    }
}
