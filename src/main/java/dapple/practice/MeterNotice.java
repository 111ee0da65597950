package dapple.practice;

import java.time.LocalDate;
import java.util.Optional;

/**
 * What who reads with a meter should know of it.
 *
 * @param day since when, or until when; none where the kind has none
 */
public record MeterNotice(Kind kind, Optional<LocalDate> day) {
    /** In the order in which they are said. */
    public enum Kind {
        LOST,
        LENT,
        BROKEN,
        DROPPED,
        CONDEMNED,
        CHECK_FAILED,
        PAST_DUE,
        NEVER_CALIBRATED,
        ON_LOAN;

        /** Whether the meter is not at hand, or does not work. */
        public boolean isAbsence() {
            return this == LOST || this == LENT || this == BROKEN;
        }
    }

    /** Its message: with its day, or without. */
    public String key() {
        return "meter-notice." + kind + (day.isPresent() ? "" : ".undated");
    }
}
