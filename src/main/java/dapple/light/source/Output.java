package dapple.light.source;

import dapple.light.geometry.Vec;
import dapple.light.quantity.Check;
import dapple.light.quantity.Quantity;

/** How much of a quantity a lamp gives: by a reading somewhere, or by its emission. */
public sealed interface Output {
    Quantity quantity();

    /** Output now over the output that is stated; a lamp fades. */
    double factor();

    /**
     * What a sensor shows of this lamp alone, with nothing between.
     *
     * @param reading above 0, in the unit of the quantity
     * @param facing direction of the sensor
     */
    record Reading(Quantity quantity, double reading, Vec at, Vec facing, double factor) implements Output {
        public Reading {
            Check.within("reading", reading, Double.MIN_NORMAL, 1e12, quantity.unit());
            Check.within("factor", factor, 0, 1000, "");
            facing = facing.unit();
        }
    }

    /**
     * The emission itself, in the quantity's unit Q: intensity of a beam on its axis, Q·m²/sr; intensity per length of a
     * line, perpendicular to it towards its aim, Q·m/sr; radiance of a surface along its normal, Q/sr.
     *
     * @param amount at least 0
     */
    record Emission(Quantity quantity, double amount, double factor) implements Output {
        public Emission {
            Check.within("emission", amount, 0, 1e12, quantity.unit());
            Check.within("factor", factor, 0, 1000, "");
        }
    }
}
