package dapple.comparison;

import dapple.light.quantity.Quantity;
import dapple.site.Given;
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
import jakarta.persistence.OrderColumn;
import jakarta.persistence.Version;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.hibernate.annotations.BatchSize;
import org.jspecify.annotations.Nullable;

/** Meters that are, or were, compared. Never edited; it ends once. */
@Entity
class Comparison {
    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private long id;

    private long siteId;

    @Enumerated(EnumType.STRING)
    private Quantity quantity;

    private Instant begunAt;
    private long begunBy;
    private @Nullable Instant endedAt;
    private @Nullable Long endedBy;
    private @Nullable String endReason;

    /** The quantity again while it is under way, so that it is compared once at a time. */
    @Enumerated(EnumType.STRING)
    private @Nullable Quantity openQuantity;

    private UUID entryKey;

    @ElementCollection
    @CollectionTable(name = "comparison_meter", joinColumns = @JoinColumn(name = "comparison_id"))
    @Column(name = "meter_id")
    @BatchSize(size = 50)
    private Set<Long> meterIds = new HashSet<>();

    @ElementCollection
    @CollectionTable(name = "comparison_point", joinColumns = @JoinColumn(name = "comparison_id"))
    @Column(name = "point_id")
    @OrderColumn(name = "place")
    @BatchSize(size = 50)
    private List<Long> pointIds = new ArrayList<>();

    @Version
    private long version;

    @SuppressWarnings("NullAway.Init")
    protected Comparison() {}

    Comparison(NewComparison begun, Instant at) {
        this.siteId = begun.siteId();
        this.quantity = begun.quantity();
        this.openQuantity = begun.quantity();
        this.begunAt = at;
        this.begunBy = begun.personId();
        this.entryKey = begun.key();
        this.meterIds.addAll(begun.meterIds());
        this.pointIds.addAll(begun.pointIds());
    }

    long id() {
        return id;
    }

    boolean isUnderWay() {
        return endedAt == null;
    }

    /** Every point has been read with every meter. */
    void complete(Instant at) {
        this.endedAt = at;
        this.openQuantity = null;
    }

    /** Somebody says that it goes no further. */
    void end(ComparisonFacts.Broken broken) {
        complete(broken.at());
        this.endedBy = broken.personId();
        this.endReason = broken.reason();
    }

    ComparisonFacts facts() {
        return new ComparisonFacts(
                id,
                siteId,
                quantity,
                begunAt,
                begunBy,
                Optional.ofNullable(endedAt),
                Optional.ofNullable(endedBy)
                        .map(by -> new ComparisonFacts.Broken(Given.of(endedAt), by, Given.of(endReason))),
                meterIds.stream().sorted().toList(),
                pointIds);
    }
}
