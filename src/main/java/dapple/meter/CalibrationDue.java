package dapple.meter;

import java.time.LocalDate;
import java.util.Optional;

/** How the next calibration of a meter stands. */
public enum CalibrationDue {
    NEVER,
    LATER,
    SOON,
    OVERDUE;

    /** From how many days before its day a calibration is due soon (common practice, no source). */
    static final int SOON_DAYS = 28;

    /** A calibration holds through its last day. */
    static CalibrationDue of(Optional<LocalDate> due, LocalDate today) {
        if (due.isEmpty()) {
            return NEVER;
        }
        if (due.get().isBefore(today)) {
            return OVERDUE;
        }
        return due.get().isAfter(today.plusDays(SOON_DAYS)) ? LATER : SOON;
    }
}
