package dapple.light.calibration;

import dapple.light.judging.MeterUncertainty;
import dapple.light.quantity.Check;
import dapple.light.uncertainty.StandardUncertainty;

/**
 * One reading in an enclosure, and what the rig as it is stated gives there.
 *
 * @param value after the meter's calibration, in the unit of the quantity, 0 to 1e12
 * @param own uncertainty of this reading by itself, its place not counted
 */
public record RigReading(String point, ByMeter meter, double value, StandardUncertainty own, SeenLight seen) {
    /** Share of a hand-held meter's uncertainty that all its readings have in common: an assumption of ours, no source. */
    public static final double SHARED = 0.8;

    /** What is left to each reading: 0.8² + 0.6² = 1. */
    private static final double OWN = 0.6;

    private static final double MOST = 1e12;

    public RigReading {
        Check.within("reading", value, 0, MOST, "");
    }

    /** A reading of a meter whose uncertainty is known as a whole. */
    public static RigReading of(
            String point, String meter, MeterUncertainty uncertainty, double value, SeenLight seen) {
        StandardUncertainty whole = StandardUncertainty.of(uncertainty);
        return new RigReading(
                point,
                new ByMeter(meter, SHARED * whole.relative()),
                value,
                new StandardUncertainty(OWN * whole.relative(), whole.absolute()),
                seen);
    }

    /** The uncertainty with that of the place where the sensor was held. */
    StandardUncertainty uncertainty() {
        return new StandardUncertainty(Math.hypot(own.relative(), seen.relativeOfPlace()), own.absolute());
    }

    /**
     * A meter.
     *
     * @param shared relative standard uncertainty that all its readings have in common, 0 to 2
     */
    public record ByMeter(String name, double shared) {
        public ByMeter {
            Check.within("shared uncertainty", shared, 0, 2, "");
        }
    }
}
