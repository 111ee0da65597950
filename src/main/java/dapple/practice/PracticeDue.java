package dapple.practice;

import java.time.LocalDate;
import java.util.Optional;

/**
 * Something that is due with a meter.
 *
 * @param since the day from which on it is due; none: it was never done
 */
public record PracticeDue(long meterId, String code, Kind kind, Optional<LocalDate> since) {
    /** In the order in which they are said. */
    public enum Kind {
        /** A drop that no check has answered. */
        CHECK_AFTER_DROP,
        /** Its readings say that it has changed. */
        AGREEMENT,
        CALIBRATION,
        REFERENCE_LAMP
    }
}
