package dapple.archive.sheet;

import dapple.light.judging.State;
import java.util.Collection;
import java.util.Comparator;

/** What readings of a week were found to be; gravest first. */
public enum WeekFound {
    /** Over the ceiling, too strong, too weak or without shade. */
    OFF_TARGET,
    /** Too close to a limit for the meter to tell. */
    BORDERLINE,
    ON_TARGET,
    /** Read, and judged by nothing. */
    UNKNOWN;

    static WeekFound of(State state) {
        return switch (state) {
            case OVER_CEILING, NO_SHADE, TOO_STRONG, TOO_WEAK -> OFF_TARGET;
            case BORDERLINE -> BORDERLINE;
            case ON_TARGET -> ON_TARGET;
            case STALE, NO_TARGET, PLANNED_OFF -> UNKNOWN;
        };
    }

    /** The gravest: one reading off target makes a week off target. */
    static WeekFound gravest(Collection<WeekFound> found) {
        return found.stream().min(Comparator.naturalOrder()).orElse(UNKNOWN);
    }

    WeekFound or(WeekFound other) {
        return compareTo(other) <= 0 ? this : other;
    }
}
