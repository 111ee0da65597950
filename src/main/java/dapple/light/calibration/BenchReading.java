package dapple.light.calibration;

import dapple.light.geometry.Vec;
import dapple.light.quantity.Check;
import dapple.light.quantity.Quantity;
import dapple.light.uncertainty.StandardUncertainty;

/**
 * What a sensor showed of one lamp alone, with nothing between.
 *
 * @param at place of the sensor, m
 * @param facing direction of the sensor
 * @param value in the unit of the quantity, 0 to 1e12; 0 needs an absolute uncertainty
 * @param uncertainty of this reading by itself; what all readings share, such as a meter's calibration, is no part of it
 */
public record BenchReading(Quantity quantity, Vec at, Vec facing, double value, StandardUncertainty uncertainty) {
    private static final double MOST = 1e12;

    public BenchReading {
        Check.within("reading", value, 0, MOST, quantity.unit());
        if (value == 0 && uncertainty.absolute() == 0) {
            throw new IllegalArgumentException("a reading of 0 must have an absolute uncertainty");
        }
        if (!at.isFinite()) {
            throw new IllegalArgumentException("a place must be finite, was " + at);
        }
        facing = facing.unit();
    }
}
