package dapple.rig;

import dapple.light.quantity.Quantity;
import java.util.Optional;

/**
 * What a prediction does not know of a rig.
 *
 * @param name of the lamp or cover
 * @param quantity that is not predicted, or lacks what the lamp gives; empty: nothing of it is
 */
public record LeftOut(String name, Optional<Quantity> quantity, Why why) {
    LeftOut(String name, Why why) {
        this(name, Optional.empty(), why);
    }

    LeftOut(String name, Quantity quantity, Why why) {
        this(name, Optional.of(quantity), why);
    }

    /** Why something is left out. */
    public enum Why {
        LAMP_WITHOUT_POSITION,
        LAMP_WITHOUT_SHAPE,
        /** It is long, and the way it lies is not known. */
        LAMP_WITHOUT_DIRECTION,
        LAMP_WITHOUT_OUTPUT,
        LAMP_IN_FURNITURE,
        /** Its output was read inside the lamp. */
        LAMP_READ_INSIDE,
        /** What it gives of the quantity is not known, so that the sum lacks it. */
        LAMP_QUANTITY_UNKNOWN,
        /** It is dimmed, and what that leaves of it is not known. */
        LAMP_DIMMED,
        COVER_WITHOUT_HEIGHT,
        /** How much of the quantity passes is not known, so that the quantity is not predicted at all. */
        COVER_QUANTITY_UNKNOWN
    }
}
