package dapple.meter;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What a certificate says of a meter from a day on. Never edited: the next one takes its place, a wrong one is withdrawn. */
@Entity
class Calibration {
    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private long id;

    private long siteId;
    private long meterId;
    private Instant calibratedAt;
    private double factor;
    private LocalDate dueOn;
    private String certificate;
    private Instant recordedAt;
    private long recordedBy;

    /** The same instant again while it holds, so that no other calibration of the meter holds from then on. */
    private @Nullable Instant openCalibratedAt;

    private @Nullable Instant withdrawnAt;
    private @Nullable Long withdrawnBy;
    private @Nullable String withdrawalReason;

    @SuppressWarnings("NullAway.Init")
    protected Calibration() {}

    Calibration(long siteId, long meterId, NewCalibration calibration, Instant recordedAt, long recordedBy) {
        this.siteId = siteId;
        this.meterId = meterId;
        this.calibratedAt = calibration.calibratedAt();
        this.openCalibratedAt = calibration.calibratedAt();
        this.factor = calibration.factor();
        this.dueOn = calibration.dueOn();
        this.certificate = calibration.certificate();
        this.recordedAt = recordedAt;
        this.recordedBy = recordedBy;
    }

    Instant calibratedAt() {
        return calibratedAt;
    }

    CalibrationDetails details() {
        return new CalibrationDetails(
                id, calibratedAt, factor, dueOn, certificate, recordedAt, recordedBy, withdrawal());
    }

    private Optional<Withdrawal> withdrawal() {
        return withdrawnAt == null || withdrawnBy == null || withdrawalReason == null
                ? Optional.empty()
                : Optional.of(new Withdrawal(withdrawnAt, withdrawnBy, withdrawalReason));
    }

    long meterId() {
        return meterId;
    }

    CalibrationInForce inForce() {
        return new CalibrationInForce(id, meterId, factor, dueOn, certificate);
    }
}
