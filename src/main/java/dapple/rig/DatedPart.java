package dapple.rig;

import dapple.rig.RigRefusedException.Reason;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.MappedSuperclass;
import java.time.Instant;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A part of a rig over [from, to), which knows the change that began it and the one that ended it. */
@MappedSuperclass
abstract class DatedPart {
    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private long id;

    private long siteId;
    private long enclosureId;
    private Instant fromAt;
    private @Nullable Instant toAt;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "begun_by")
    private RigChange begun;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "ended_by")
    private @Nullable RigChange ended;

    @SuppressWarnings("NullAway.Init")
    protected DatedPart() {}

    DatedPart(RigChange begun) {
        this.siteId = begun.siteId();
        this.enclosureId = begun.enclosureId();
        this.fromAt = begun.at();
        this.begun = begun;
    }

    long id() {
        return id;
    }

    long enclosureId() {
        return enclosureId;
    }

    Instant fromAt() {
        return fromAt;
    }

    Optional<Instant> toAt() {
        return Optional.ofNullable(toAt);
    }

    /**
     * Holds no longer.
     *
     * @throws RigRefusedException if it was changed at that instant or after it
     */
    void end(RigChange change) {
        if (toAt != null) {
            throw new RigRefusedException(Reason.PART_ENDED, toAt);
        }
        if (!change.at().isAfter(fromAt)) {
            throw new RigRefusedException(Reason.CHANGED_LATER, fromAt);
        }
        this.toAt = change.at();
        this.ended = change;
    }

    /** The change that began it, and the one that ended it. */
    Stream<RigChange> changes() {
        return Stream.concat(Stream.of(begun), Optional.ofNullable(ended).stream());
    }

    Span span() {
        return new Span(
                fromAt,
                Optional.ofNullable(toAt),
                begun.id(),
                begun.recordedAt(),
                Optional.ofNullable(ended).map(RigChange::id),
                Optional.ofNullable(ended).map(RigChange::recordedAt));
    }
}
