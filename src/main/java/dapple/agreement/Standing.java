package dapple.agreement;

import dapple.light.metrology.MeterFinding;
import dapple.light.metrology.MeterFinding.Steady;
import dapple.light.metrology.MeterFinding.Unknown;

/** What is known of a meter by its readings. */
enum Standing {
    /** No change was found, and its drift lies within an interval. */
    STEADY,
    /** It has drifted or was knocked. */
    CHANGED,
    TOO_FEW_READINGS,
    /** A knock would have shown; a drift cannot be told from lamps that age. */
    NEEDS_REFERENCE;

    static Standing of(MeterFinding finding) {
        if (finding instanceof Unknown unknown) {
            return switch (unknown.why()) {
                case TOO_FEW_READINGS -> TOO_FEW_READINGS;
                case NEEDS_REFERENCE -> NEEDS_REFERENCE;
            };
        }
        return finding instanceof Steady ? STEADY : CHANGED;
    }
}
