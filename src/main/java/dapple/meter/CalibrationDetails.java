package dapple.meter;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;

/**
 * A calibration on record.
 *
 * @param file what can be opened of the certificate
 */
public record CalibrationDetails(
        long id,
        Instant calibratedAt,
        CalibrationFactors factors,
        LocalDate dueOn,
        String certificate,
        Optional<CertificateFacts> file,
        Instant recordedAt,
        long recordedBy,
        Optional<Withdrawal> withdrawal) {
    CalibrationDetails with(Optional<CertificateFacts> found) {
        return new CalibrationDetails(
                id, calibratedAt, factors, dueOn, certificate, found, recordedAt, recordedBy, withdrawal);
    }
}
