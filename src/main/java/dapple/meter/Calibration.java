package dapple.meter;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import java.time.Instant;
import java.time.LocalDate;

/** What a certificate says of a meter from a day on. Never edited: the next one takes its place. */
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

    @SuppressWarnings("NullAway.Init")
    protected Calibration() {}

    Calibration(long siteId, long meterId, NewCalibration calibration, Instant recordedAt, long recordedBy) {
        this.siteId = siteId;
        this.meterId = meterId;
        this.calibratedAt = calibration.calibratedAt();
        this.factor = calibration.factor();
        this.dueOn = calibration.dueOn();
        this.certificate = calibration.certificate();
        this.recordedAt = recordedAt;
        this.recordedBy = recordedBy;
    }

    CalibrationInForce inForce() {
        return new CalibrationInForce(id, meterId, factor, dueOn, certificate);
    }
}
