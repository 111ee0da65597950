package dapple.light.metrology;

/** What makes a reading uncertain, by the field's names. */
public enum Cause {
    /** The meter's factor as its certificate states it. */
    CALIBRATION(true),
    /** The lamp's spectrum is not the one by which the meter was calibrated. */
    SPECTRAL_MISMATCH(true),
    /** The sensor does not take slanted light by the cosine, or did not face as it should. */
    ANGLE(false),
    /** The sensor was not quite at the point. */
    POSITION(false),
    TEMPERATURE(false),
    /** What differs from one reading to the next. */
    REPEATS(false),
    /** The step of the display. */
    RESOLUTION(false);

    private final boolean shared;

    Cause(boolean shared) {
        this.shared = shared;
    }

    /** Whether all readings by one meter share it, so that it cancels in their ratios and not in their sums. */
    public boolean isShared() {
        return shared;
    }
}
