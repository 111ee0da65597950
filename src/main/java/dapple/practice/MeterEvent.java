package dapple.practice;

import dapple.meter.Withdrawal;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Something that happened to a meter. Never edited: a wrong one is withdrawn. */
@Entity
class MeterEvent {
    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private long id;

    private long siteId;
    private long meterId;

    @Enumerated(EnumType.STRING)
    private MeterEventKind kind;

    private Instant happenedAt;
    private String note;
    private Instant recordedAt;
    private long recordedBy;
    private UUID entryKey;
    private @Nullable Instant withdrawnAt;
    private @Nullable Long withdrawnBy;
    private @Nullable String withdrawalReason;

    @SuppressWarnings("NullAway.Init")
    protected MeterEvent() {}

    MeterEvent(Entered entered, MeterEventKind kind, Instant happenedAt, String note) {
        this.siteId = entered.siteId();
        this.meterId = entered.meterId();
        this.kind = kind;
        this.happenedAt = happenedAt;
        this.note = note;
        this.recordedAt = entered.at();
        this.recordedBy = entered.personId();
        this.entryKey = entered.key();
    }

    long id() {
        return id;
    }

    MeterEventFacts facts() {
        return new MeterEventFacts(id, meterId, kind, happenedAt, note, recordedBy, withdrawal());
    }

    private Optional<Withdrawal> withdrawal() {
        return withdrawnAt == null || withdrawnBy == null || withdrawalReason == null
                ? Optional.empty()
                : Optional.of(new Withdrawal(withdrawnAt, withdrawnBy, withdrawalReason));
    }
}
