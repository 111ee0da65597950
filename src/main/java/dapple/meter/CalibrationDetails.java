package dapple.meter;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;

/**
 * A calibration on record.
 *
 * @param factor true value over displayed value; 1: no correction
 */
public record CalibrationDetails(
        long id,
        Instant calibratedAt,
        double factor,
        LocalDate dueOn,
        String certificate,
        Instant recordedAt,
        long recordedBy,
        Optional<Withdrawal> withdrawal) {
    public boolean isCorrecting() {
        return factor != 1;
    }
}
