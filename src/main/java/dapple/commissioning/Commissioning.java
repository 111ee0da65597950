package dapple.commissioning;

import jakarta.persistence.CollectionTable;
import jakarta.persistence.Column;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import java.time.Instant;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;

/** A rig that somebody has accepted as it was read. Never edited. */
@Entity
@Immutable
class Commissioning {
    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private long id;

    private long siteId;
    private long enclosureId;
    private long rigChangeId;
    private @Nullable Long resultChangeId;
    private String reason;
    private boolean ownReadings;
    private UUID entryKey;
    private Instant acceptedAt;
    private long acceptedBy;

    @ElementCollection(fetch = FetchType.LAZY)
    @CollectionTable(name = "commissioning_reading", joinColumns = @JoinColumn(name = "commissioning_id"))
    @Column(name = "reading_id")
    private Set<Long> readings = new HashSet<>();

    @ElementCollection(fetch = FetchType.LAZY)
    @CollectionTable(name = "commissioning_factor", joinColumns = @JoinColumn(name = "commissioning_id"))
    private Set<FactorRow> factors = new HashSet<>();

    @SuppressWarnings("NullAway.Init")
    protected Commissioning() {}

    Commissioning(Acceptance accepted, @Nullable Long resultChangeId, Instant at) {
        this.siteId = accepted.me().siteId();
        this.enclosureId = accepted.trial().scene().enclosure().id();
        this.rigChangeId = accepted.trial().change().id();
        this.resultChangeId = resultChangeId;
        this.reason = accepted.reason();
        this.ownReadings = accepted.trial().isReadBy(accepted.me().personId());
        this.entryKey = accepted.key();
        this.acceptedAt = at;
        this.acceptedBy = accepted.me().personId();
        accepted.trial().taken().forEach(one -> readings.add(one.reading().readingId()));
        this.factors.addAll(accepted.factors());
    }

    long id() {
        return id;
    }

    AcceptanceOnRecord onRecord(String acceptedBy, List<AcceptanceOnRecord.OnReading> read) {
        return new AcceptanceOnRecord(reason, ownReadings, acceptedAt, acceptedBy, read);
    }

    CommissioningFacts facts(String acceptedBy) {
        return new CommissioningFacts(
                id,
                enclosureId,
                reason,
                ownReadings,
                acceptedAt,
                acceptedBy,
                readings.size(),
                factors.stream()
                        .sorted(Comparator.comparing(FactorRow::quantity)
                                .thenComparing(FactorRow::part)
                                .thenComparing(FactorRow::name))
                        .toList());
    }
}
