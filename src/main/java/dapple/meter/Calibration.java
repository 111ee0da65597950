package dapple.meter;

import dapple.site.Given;
import jakarta.persistence.CollectionTable;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.OrderColumn;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hibernate.annotations.BatchSize;
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
    /** One for all amounts; none: by ranges. */
    private @Nullable Double factor;

    private @Nullable Double rangesFrom;

    @ElementCollection
    @CollectionTable(name = "calibration_range", joinColumns = @JoinColumn(name = "calibration_id"))
    @OrderColumn(name = "place")
    @BatchSize(size = 50)
    private List<CalibrationRange> ranges = new ArrayList<>();

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
        become(calibration.factors());
        this.dueOn = calibration.dueOn();
        this.certificate = calibration.certificate();
        this.recordedAt = recordedAt;
        this.recordedBy = recordedBy;
    }

    private void become(CalibrationFactors factors) {
        if (factors.isOne()) {
            this.factor = factors.at(0);
            return;
        }
        this.rangesFrom = factors.from();
        factors.ranges().forEach(range -> ranges.add(new CalibrationRange(range)));
    }

    private CalibrationFactors factors() {
        return factor == null || rangesFrom != null
                ? new CalibrationFactors(
                        Given.of(rangesFrom),
                        ranges.stream().map(CalibrationRange::factor).toList())
                : CalibrationFactors.of(factor);
    }

    Instant calibratedAt() {
        return calibratedAt;
    }

    CalibrationDetails details() {
        return new CalibrationDetails(
                id,
                calibratedAt,
                factors(),
                dueOn,
                certificate,
                Optional.empty(),
                recordedAt,
                recordedBy,
                withdrawal());
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
        return new CalibrationInForce(id, meterId, factors(), dueOn, certificate);
    }
}
