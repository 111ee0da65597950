package dapple.light.uncertainty;

import dapple.light.quantity.Check;
import dapple.light.quantity.Interval;

/**
 * An amount and how sure it is.
 *
 * @param value in the unit of its quantity
 * @param standardUncertainty u, in the same unit, at least 0
 */
public record UncertainAmount(double value, double standardUncertainty) {
    /** Coverage factor k of every expanded uncertainty here, U = k · u: about 95 % [jcgm100]. */
    public static final double COVERAGE_FACTOR = 2;

    public UncertainAmount {
        Check.within("amount", value, -Double.MAX_VALUE, Double.MAX_VALUE, "");
        Check.notNegative("standard uncertainty", standardUncertainty, "");
    }

    /** U = 2 · u. */
    public double expanded() {
        return COVERAGE_FACTOR * standardUncertainty;
    }

    /** From value − U to value + U, cut off at 0: for amounts of light, which are never negative. */
    public Interval interval() {
        return new Interval(Math.max(0, value - expanded()), Math.max(0, value + expanded()));
    }
}
