package dapple.light.dose;

import dapple.light.judging.State;
import java.util.Collection;
import java.util.Comparator;

/** What a day was found to be; gravest first. */
public enum DayJudgement {
    /** Too strong, over the ceiling, or without shade. */
    STRONG,
    WEAK,
    UNKNOWN,
    /** Read, and too close to a limit for the meter to tell. */
    BORDERLINE,
    ON_TARGET,
    PLANNED_OFF;

    static DayJudgement of(State state) {
        return switch (state) {
            case OVER_CEILING, NO_SHADE, TOO_STRONG -> STRONG;
            case TOO_WEAK -> WEAK;
            case BORDERLINE -> BORDERLINE;
            case ON_TARGET -> ON_TARGET;
            case STALE, NO_TARGET, PLANNED_OFF -> UNKNOWN;
        };
    }

    /** The gravest of what was decided; unknown only where nothing was. */
    static DayJudgement ofReadings(Collection<State> states) {
        return states.stream()
                .map(DayJudgement::of)
                .filter(one -> one != UNKNOWN)
                .min(Comparator.naturalOrder())
                .orElse(UNKNOWN);
    }

    /** The gravest of the parts of a day, so that a part that is unknown is never fine. */
    static DayJudgement ofParts(Collection<DayJudgement> parts) {
        return parts.stream().min(Comparator.naturalOrder()).orElse(UNKNOWN);
    }
}
