package dapple.light.calibration;

/** What comes of readings in an enclosure. */
public sealed interface RigResult permits FittedRig, RigResult.Unfinished {
    /** The fit came to no end within its limits. */
    record Unfinished(String reason) implements RigResult {}
}
