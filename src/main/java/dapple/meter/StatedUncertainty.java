package dapple.meter;

import dapple.light.quantity.Check;

/**
 * How sure somebody says that a meter is.
 *
 * @param share expanded uncertainty (95 %) as a share of the reading, above 0, below 1
 * @param source who says so, where
 */
public record StatedUncertainty(double share, String source) {
    public StatedUncertainty {
        Check.within("stated uncertainty", share, Double.MIN_NORMAL, Math.nextDown(1.0), "");
    }
}
