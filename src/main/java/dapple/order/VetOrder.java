package dapple.order;

import dapple.light.judging.Band;
import dapple.light.judging.Limits;
import dapple.site.Given;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A vet's order; never edited: it ends early, or another follows it. */
@Entity
class VetOrder {
    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private long id;

    private long siteId;
    private long animalId;

    @Enumerated(EnumType.STRING)
    private OrderKind kind;

    private @Nullable Double baskingLow;
    private @Nullable Double baskingHigh;
    private @Nullable Double shadeHigh;
    private @Nullable Double ceiling;
    private String reason;
    private Instant fromAt;
    private LocalDate lastDay;
    private Instant toAt;
    private @Nullable Long inheritedFromId;
    private @Nullable Long followedById;
    private @Nullable Instant endedAt;
    private @Nullable Long endedBy;
    private @Nullable String endedReason;
    private @Nullable UUID entryKey;
    private Instant recordedAt;
    private long recordedBy;

    @SuppressWarnings("NullAway.Init")
    protected VetOrder() {}

    @SuppressWarnings("NullAway.Init")
    VetOrder(long siteId, NewOrder order, Span span, Instant recordedAt) {
        this.siteId = siteId;
        this.animalId = order.animalId();
        this.reason = order.reason();
        this.lastDay = order.lastDay();
        this.fromAt = span.from();
        this.toAt = span.to();
        this.entryKey = order.key();
        this.recordedAt = recordedAt;
        this.recordedBy = order.personId();
        say(order.ordered());
    }

    private void say(Ordered ordered) {
        this.kind = ordered.kind();
        if (ordered instanceof Ordered.OwnLimits own) {
            this.baskingLow = own.limits().basking().low();
            this.baskingHigh = own.limits().basking().high();
            this.shadeHigh = own.limits().shadeHigh();
            this.ceiling = own.limits().ceiling();
        } else if (ordered instanceof Ordered.Cap cap) {
            this.ceiling = cap.ceiling();
        }
    }

    /** The same for an animal that leaves the group, for what is left of it. */
    VetOrder inheritedBy(long leavingId, Instant at, Instant now) {
        VetOrder copy = new VetOrder();
        copy.siteId = siteId;
        copy.animalId = leavingId;
        copy.say(ordered());
        copy.reason = reason;
        copy.fromAt = fromAt.isBefore(at) ? at : fromAt;
        copy.lastDay = lastDay;
        copy.toAt = toAt;
        copy.inheritedFromId = id;
        copy.recordedAt = now;
        copy.recordedBy = recordedBy;
        return copy;
    }

    /** Ends it at an instant; one that has not begun by then never does. */
    void end(Instant at, OrderFacts.EarlyEnd end) {
        this.toAt = at.isBefore(fromAt) ? fromAt : at;
        this.endedAt = end.recordedAt();
        this.endedBy = end.personId();
        this.endedReason = end.reason();
        this.followedById = end.followedBy().orElse(null);
    }

    long id() {
        return id;
    }

    OrderFacts facts() {
        return new OrderFacts(
                id,
                animalId,
                ordered(),
                reason,
                fromAt,
                lastDay,
                toAt,
                recordedBy,
                recordedAt,
                Optional.ofNullable(inheritedFromId),
                earlyEnd());
    }

    private Ordered ordered() {
        return switch (kind) {
            case OWN_LIMITS ->
                new Ordered.OwnLimits(new Limits(
                        new Band(Given.of(baskingLow), Given.of(baskingHigh)), Given.of(shadeHigh), Given.of(ceiling)));
            case UV_OFF -> new Ordered.UvOff();
            case CAP -> new Ordered.Cap(Given.of(ceiling));
        };
    }

    private Optional<OrderFacts.EarlyEnd> earlyEnd() {
        return endedAt == null || endedBy == null || endedReason == null
                ? Optional.empty()
                : Optional.of(
                        new OrderFacts.EarlyEnd(endedAt, endedBy, endedReason, Optional.ofNullable(followedById)));
    }

    /** [from, to). */
    record Span(Instant from, Instant to) {}
}
