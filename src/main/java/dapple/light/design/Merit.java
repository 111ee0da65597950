package dapple.light.design;

/** What a proposed rig is best in, among those that meet every demand. */
public enum Merit {
    /** Fewest things to do by hand. */
    FEWEST_CHANGES,
    /** Least power of the mains, among those whose power is known. */
    LEAST_POWER,
    /** The most even fall of light along the way. */
    BEST_GRADIENT,
    /** Farthest inside the bands. */
    WELL_INSIDE;

    /** So much more than any loss a step of the merit itself weighs, so that the loss decides between equals alone. */
    private static final double STEP = 1000;

    /** What a change weighs where all else is equal. */
    private static final double TIE = 1e-9;

    /** Steps of power, W. */
    private static final double POWER_STEP = 0.1;

    /** Steps of unevenness. */
    private static final double GRADIENT_STEP = 0.01;

    /** The lower the better; infinite where the merit is not known. */
    double key(Score score) {
        double primary = switch (this) {
            case FEWEST_CHANGES -> score.changes();
            case LEAST_POWER -> Math.rint(score.watts() / POWER_STEP);
            case BEST_GRADIENT -> Math.rint(score.unevenness() / GRADIENT_STEP);
            case WELL_INSIDE -> 0;
        };
        return Double.isNaN(primary) ? Double.POSITIVE_INFINITY : STEP * primary + score.loss() + TIE * score.changes();
    }
}
