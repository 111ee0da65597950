package dapple.light.judging;

/** What a point, or an enclosure as a whole, is found to be; gravest first. */
public enum State {
    OVER_CEILING,
    NO_SHADE,
    TOO_STRONG,
    TOO_WEAK,
    STALE,
    BORDERLINE,
    NO_TARGET,
    PLANNED_OFF,
    ON_TARGET;

    public boolean isGraverThan(State other) {
        return compareTo(other) < 0;
    }
}
