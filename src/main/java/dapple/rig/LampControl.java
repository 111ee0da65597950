package dapple.rig;

/** What switches or dims a lamp beside its timer. */
public enum LampControl {
    /** On and off, nothing between. */
    SWITCHED,
    /** Less than its rated voltage: a dimmer that cuts phases, or a lower voltage. */
    DIMMED,
    /** Switched or dimmed by the temperature. */
    THERMOSTAT
}
