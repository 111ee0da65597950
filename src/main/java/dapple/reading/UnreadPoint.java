package dapple.reading;

import dapple.light.quantity.Quantity;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;

/** Why a point was not read in a visit. */
@Entity
@Immutable
class UnreadPoint {
    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private long id;

    private long siteId;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "visit_id")
    private Visit visit;

    private long pointId;

    @Enumerated(EnumType.STRING)
    private Outcome outcome;

    @Enumerated(EnumType.STRING)
    private @Nullable Quantity quantity;

    private Instant notedAt;
    private UUID entryKey;

    @SuppressWarnings("NullAway.Init")
    protected UnreadPoint() {}

    UnreadPoint(Visit visit, Unread unread) {
        this.siteId = visit.siteId();
        this.visit = visit;
        this.pointId = unread.place().pointId();
        this.outcome = unread.outcome();
        this.quantity =
                unread.quantity().filter(one -> outcome.isOfOneQuantity()).orElse(null);
        this.notedAt = unread.notedAt();
        this.entryKey = unread.key();
    }

    long pointId() {
        return pointId;
    }

    Outcome outcome() {
        return outcome;
    }

    /** What alone was not read; none where the whole point was not. */
    Optional<Quantity> quantity() {
        return Optional.ofNullable(quantity);
    }
}
