package dapple.reading;

import dapple.light.judging.State;
import dapple.site.SourceMark;
import org.springframework.stereotype.Component;

/** Which mark and which colour class stand for a state, an outcome or a source; the word always stands beside them. */
@Component
public class Marks {
    /** Address of the mark in the page's sprite. */
    public String of(State state) {
        return switch (state) {
            case OVER_CEILING -> "#over-ceiling";
            case NO_SHADE -> "#no-shade";
            case TOO_STRONG -> "#too-strong";
            case TOO_WEAK -> "#too-weak";
            case STALE -> "#stale";
            case BORDERLINE -> "#borderline";
            case NO_TARGET -> "#no-target";
            case PLANNED_OFF -> "#planned-off";
            case ON_TARGET -> "#on-target";
        };
    }

    public String of(Outcome outcome) {
        return switch (outcome) {
            case LAMP_OUT -> "#lamp-out";
            case COULD_NOT_REACH -> "#no-reach";
            case ANIMAL_IN_THE_WAY -> "#animal";
            case NO_METER -> "#no-meter";
            case SKIPPED -> "#skipped";
        };
    }

    /** Published, assumed by practice or from memory, measured, or computed. */
    public String of(SourceMark mark) {
        return switch (mark) {
            case PUBLISHED, PUBLISHED_SECONDARY -> "#published";
            case COMMON_PRACTICE, FROM_MEMORY -> "#assumed";
            case MEASURED -> "#measured";
            case COMPUTED -> "#predicted";
        };
    }

    /** Colour is spent only where someone has to act. */
    public String colour(State state) {
        return switch (state) {
            case OVER_CEILING -> "ceiling";
            case NO_SHADE, TOO_STRONG -> "strong";
            case TOO_WEAK -> "weak";
            case STALE, NO_TARGET, PLANNED_OFF -> "calm";
            case BORDERLINE, ON_TARGET -> "";
        };
    }

    /** In a row of all enclosures, on target steps back so that the rest stands out. */
    public String still(State state) {
        return state == State.ON_TARGET ? "still" : colour(state);
    }
}
