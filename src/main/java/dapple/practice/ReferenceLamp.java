package dapple.practice;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A lamp that a meter is checked by, with what the meter showed under it at first. Another one takes its place. */
@Entity
class ReferenceLamp {
    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private long id;

    private long siteId;
    private long meterId;
    private String name;
    private String setUp;
    private double firstAmount;
    private Instant firstAt;
    private @Nullable Instant endedAt;

    /** The meter again while it is checked by this lamp, so that it is by one alone. */
    private @Nullable Long openMeterId;

    private Instant recordedAt;
    private long recordedBy;
    private UUID entryKey;

    @SuppressWarnings("NullAway.Init")
    protected ReferenceLamp() {}

    ReferenceLamp(Entered entered, NewReferenceLamp named) {
        this.siteId = entered.siteId();
        this.meterId = entered.meterId();
        this.openMeterId = entered.meterId();
        this.name = named.name();
        this.setUp = named.setUp();
        this.firstAmount = named.firstAmount();
        this.firstAt = named.firstAt();
        this.recordedAt = entered.at();
        this.recordedBy = entered.personId();
        this.entryKey = entered.key();
    }

    void end(Instant at) {
        this.endedAt = at;
        this.openMeterId = null;
    }

    ReferenceLampFacts facts() {
        return new ReferenceLampFacts(
                id, meterId, name, setUp, firstAmount, firstAt, Optional.ofNullable(endedAt), recordedBy);
    }
}
