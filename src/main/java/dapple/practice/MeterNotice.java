package dapple.practice;

import java.time.LocalDate;
import java.util.Optional;

/**
 * What who reads with a meter should know of it.
 *
 * @param day since when, or until when; none where the kind has none
 * @param percent by how much its readings seem to be off; none where the kind says nothing of it
 */
public record MeterNotice(Kind kind, Optional<LocalDate> day, Optional<Integer> percent) {
    MeterNotice(Kind kind, Optional<LocalDate> day) {
        this(kind, day, Optional.empty());
    }

    /** In the order in which they are said. */
    public enum Kind {
        LOST,
        LENT,
        BROKEN,
        DROPPED,
        CONDEMNED,
        CHECK_FAILED,
        READS_LOW,
        READS_HIGH,
        /** This one, or another meter the other way, or all lamps. */
        MAY_READ_LOW,
        MAY_READ_HIGH,
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
