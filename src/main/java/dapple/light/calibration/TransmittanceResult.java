package dapple.light.calibration;

import dapple.light.quantity.Interval;
import java.util.List;

/** What pairs of readings say of a cover. */
public sealed interface TransmittanceResult {
    /**
     * The share that each layer passes.
     *
     * @param share 0 to 1
     * @param interval 95 %, within 0 to 1
     * @param inStandardUnits (ratio − fitted)/u of each pair, in the order given
     */
    record Measured(
            double share, double standardUncertainty, Interval interval, List<Double> inStandardUnits, Quality quality)
            implements TransmittanceResult {
        public Measured {
            inStandardUnits = List.copyOf(inStandardUnits);
        }

        /** Whether a pair fits the others. */
        public boolean fits(int pair) {
            return Math.abs(inStandardUnits.get(pair)) <= Residual.MOST;
        }
    }

    /** The pairs do not say it, or the fit came to no end. */
    record Unknown(String reason) implements TransmittanceResult {}
}
