package dapple.lamp;

import dapple.light.quantity.Quantity;
import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What was measured of one lamp. Never edited: the newest of each quantity stands, a wrong one is withdrawn. */
@Entity
@Table(name = "lamp_output")
class OwnOutput {
    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private long id;

    private long siteId;
    private long lampId;
    private @Nullable Long standingLampId;

    @Embedded
    private LampOutput output;

    private Instant measuredAt;
    private Instant recordedAt;
    private long recordedBy;
    private @Nullable Instant withdrawnAt;
    private @Nullable Long withdrawnBy;
    private @Nullable String withdrawnReason;

    @SuppressWarnings("NullAway.Init")
    protected OwnOutput() {}

    OwnOutput(long siteId, long lampId, LampOutput output, Instant measuredAt, Instant recordedAt, long recordedBy) {
        this.siteId = siteId;
        this.lampId = lampId;
        this.output = output;
        this.measuredAt = measuredAt;
        this.recordedAt = recordedAt;
        this.recordedBy = recordedBy;
    }

    void stand() {
        this.standingLampId = lampId;
    }

    void giveWay() {
        this.standingLampId = null;
    }

    void withdraw(Instant at, long by, String reason) {
        giveWay();
        this.withdrawnAt = at;
        this.withdrawnBy = by;
        this.withdrawnReason = reason;
    }

    long id() {
        return id;
    }

    long lampId() {
        return lampId;
    }

    LampOutput output() {
        return output;
    }

    Quantity quantity() {
        return output.quantity();
    }

    Instant measuredAt() {
        return measuredAt;
    }

    boolean isWithdrawn() {
        return withdrawnAt != null;
    }

    MeasuredOutput facts() {
        return new MeasuredOutput(
                id,
                output,
                measuredAt,
                recordedBy,
                standingLampId != null,
                Optional.ofNullable(withdrawnAt),
                Optional.ofNullable(withdrawnBy),
                Optional.ofNullable(withdrawnReason));
    }
}
