package dapple.agreement;

import dapple.light.quantity.Interval;
import dapple.light.quantity.Quantity;
import dapple.site.ConflictException;
import jakarta.persistence.CollectionTable;
import jakarta.persistence.Column;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.Version;
import java.time.Duration;
import java.time.Instant;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import org.hibernate.annotations.BatchSize;
import org.jspecify.annotations.Nullable;

/** What was told of a meter, or of all at once. Never deleted: taken back by later readings, or settled. */
@Entity
class AgreementFinding {
    /** A shift of all meters is the same one while its likeliest week moves no further. */
    private static final Duration SAME_SHIFT = Duration.ofDays(56);

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private long id;

    private long siteId;

    @Enumerated(EnumType.STRING)
    private Quantity quantity;

    @Enumerated(EnumType.STRING)
    private FindingKind kind;

    private @Nullable Long meterId;
    private @Nullable Long calibrationId;
    private Instant foundAt;
    private Instant weekFrom;
    private double lnChange;
    private double lnLow;
    private double lnHigh;
    private double lnNow;
    private boolean isMaybeLamps;

    @ElementCollection
    @CollectionTable(name = "agreement_doubt", joinColumns = @JoinColumn(name = "finding_id"))
    @Column(name = "meter_id")
    @BatchSize(size = 50)
    private Set<Long> doubts = new HashSet<>();

    private Instant toldAt;
    private @Nullable Instant takenBackAt;
    private @Nullable Instant settledAt;
    private @Nullable Long settledBy;
    private @Nullable String settledReason;

    /** Names what it is about while it is open, so that it is told once. */
    private @Nullable String openKey;

    @Version
    private long version;

    @SuppressWarnings("NullAway.Init")
    protected AgreementFinding() {}

    AgreementFinding(long siteId, Told told, Instant now) {
        this.siteId = siteId;
        this.quantity = told.quantity();
        this.meterId = told.meter().map(MeterKey::meterId).orElse(null);
        this.calibrationId = told.meter().flatMap(MeterKey::calibrationId).orElse(null);
        this.foundAt = told.foundAt();
        this.toldAt = now;
        this.openKey = siteId + "/" + quantity + "/"
                + told.meter()
                        .map(MeterKey::text)
                        .orElse("all since " + told.weekFrom().getEpochSecond());
        become(told);
    }

    /** The same by more readings; when it was found first stays. */
    final void become(Told told) {
        this.kind = told.kind();
        this.weekFrom = told.weekFrom();
        this.lnChange = told.change().estimate();
        this.lnLow = told.change().interval().low();
        this.lnHigh = told.change().interval().high();
        this.lnNow = told.lnNow();
        this.isMaybeLamps = told.maybeLamps();
        if (!doubts.equals(told.doubts())) {
            doubts.clear();
            doubts.addAll(told.doubts());
        }
    }

    boolean isOpen() {
        return openKey != null;
    }

    /** Whether a computation tells the same again. */
    boolean isAbout(Told told) {
        return told.meter()
                .map(this::isOf)
                .orElseGet(() -> meterId == null
                        && Duration.between(weekFrom, told.weekFrom()).abs().compareTo(SAME_SHIFT) <= 0);
    }

    private boolean isOf(MeterKey key) {
        return meterId != null && meterId == key.meterId() && isSince(key.calibrationId());
    }

    /** Whether somebody has dealt with it, so that it is not told again: a later knock is another one. */
    boolean silences(Told told) {
        return settledBy != null
                && settledAt != null
                && isAbout(told)
                && !(told.kind() == FindingKind.KNOCKED && told.weekFrom().isAfter(settledAt));
    }

    /** Whether it lies so far back that the readings before it no longer count: they cannot take it back. */
    boolean isOlderThan(Instant horizon) {
        return kind != FindingKind.DRIFTING && weekFrom.isBefore(horizon);
    }

    boolean isSince(Optional<Long> calibration) {
        return calibration.equals(Optional.ofNullable(calibrationId));
    }

    void takeBack(Instant now) {
        this.takenBackAt = now;
        this.openKey = null;
    }

    void settle(Instant now, long personId, String reason) {
        if (!isOpen()) {
            throw new ConflictException("the finding is settled or taken back already");
        }
        settleByCalibration(now);
        this.settledBy = personId;
        this.settledReason = reason;
    }

    void settleByCalibration(Instant now) {
        this.settledAt = now;
        this.openKey = null;
    }

    FindingFacts facts() {
        return new FindingFacts(
                id,
                quantity,
                kind,
                Optional.ofNullable(meterId),
                foundAt,
                weekFrom,
                lnChange,
                new Interval(lnLow, lnHigh),
                lnNow,
                Set.copyOf(doubts),
                isMaybeLamps,
                toldAt,
                Optional.ofNullable(takenBackAt),
                Optional.ofNullable(settledAt).map(this::settlement));
    }

    private FindingFacts.Settlement settlement(Instant at) {
        return new FindingFacts.Settlement(at, Optional.ofNullable(settledBy), Optional.ofNullable(settledReason));
    }
}
