package dapple.practice;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;

/** A check of a meter, with the limits of its day. Never edited. */
@Entity
@Immutable
class MeterCheck {
    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private long id;

    private long siteId;
    private long meterId;

    @Enumerated(EnumType.STRING)
    private CheckKind kind;

    private @Nullable Long referenceLampId;
    private double amount;
    private double lowest;
    private double highest;
    private boolean good;
    private Instant checkedAt;
    private String note;
    private Instant recordedAt;
    private long recordedBy;
    private UUID entryKey;

    @SuppressWarnings("NullAway.Init")
    protected MeterCheck() {}

    MeterCheck(Entered entered, Optional<Long> lampId, Tolerance within, Shown shown) {
        this.siteId = entered.siteId();
        this.meterId = entered.meterId();
        this.kind = lampId.isPresent() ? CheckKind.REFERENCE_LAMP : CheckKind.DARK_ZERO;
        this.referenceLampId = lampId.orElse(null);
        this.amount = shown.amount();
        this.lowest = within.lowest();
        this.highest = within.highest();
        this.good = within.includes(shown.amount());
        this.checkedAt = shown.at();
        this.note = shown.note();
        this.recordedAt = entered.at();
        this.recordedBy = entered.personId();
        this.entryKey = entered.key();
    }

    MeterCheckFacts facts() {
        return new MeterCheckFacts(
                meterId,
                kind,
                Optional.ofNullable(referenceLampId),
                amount,
                lowest,
                highest,
                good,
                checkedAt,
                note,
                recordedBy);
    }
}
