package dapple.reading;

import dapple.enclosure.Facing;
import dapple.light.quantity.Check;
import dapple.light.quantity.Quantity;
import dapple.site.ConflictException;
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
import java.util.UUID;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;

/** One value of one quantity at one point, as the meter showed it. Never edited. */
@Entity
@Immutable
class Reading {
    /** The most that is stored of what no temperature is: no lamp comes near it. */
    private static final double MOST = 9_999_999;

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private long id;

    private long siteId;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "visit_id")
    private Visit visit;

    private long pointId;
    private long meterId;

    @Enumerated(EnumType.STRING)
    private Quantity quantity;

    private double amount;

    @Enumerated(EnumType.STRING)
    private Facing facing;

    private boolean heldAsAsked;
    private Instant takenAt;
    private Instant recordedAt;
    private long recordedBy;
    private UUID entryKey;
    private @Nullable Long supersedesId;
    private @Nullable String reason;

    @SuppressWarnings("NullAway.Init")
    protected Reading() {}

    /** Of a temperature it does not matter how the sensor is held. */
    Reading(Visit visit, Entry entry, Quantity quantity, Facing asked, Recorded recorded) {
        Check.within("reading", entry.amount(), quantity.lowest(), most(quantity), quantity.unit());
        this.siteId = visit.siteId();
        this.visit = visit;
        this.pointId = entry.place().pointId();
        this.meterId = entry.meterId();
        this.quantity = quantity;
        this.amount = entry.amount();
        this.facing = entry.held().orElse(asked);
        this.heldAsAsked = quantity.isTemperature() || facing == asked;
        this.takenAt = entry.takenAt();
        this.recordedAt = recorded.at();
        this.recordedBy = recorded.by();
        this.entryKey = entry.key();
    }

    private static double most(Quantity quantity) {
        return quantity.isTemperature() ? quantity.highest() : MOST;
    }

    /** The same reading with another amount, in place of a mistyped one. */
    Reading correctedBy(Correction correction, Recorded recorded) {
        VisitPlace place = new VisitPlace(visit.entryKey(), visit.enclosureId(), pointId);
        Entry entry = new Entry(correction.key(), place, meterId, correction.amount(), takenAt);
        Reading corrected = new Reading(visit, entry, quantity, facing, recorded);
        corrected.heldAsAsked = heldAsAsked;
        corrected.supersedesId = id;
        corrected.reason = correction.reason();
        return corrected;
    }

    long id() {
        return id;
    }

    long siteId() {
        return siteId;
    }

    Visit visit() {
        return visit;
    }

    long pointId() {
        return pointId;
    }

    long meterId() {
        return meterId;
    }

    Quantity quantity() {
        return quantity;
    }

    double amount() {
        return amount;
    }

    Shown shown() {
        return new Shown(id, pointId, meterId, quantity, amount, heldAsAsked, takenAt);
    }

    /** Whether the sensor was held as the point says; if not, the reading is context. */
    boolean isHeldAsAsked() {
        return heldAsAsked;
    }

    boolean supersedes(long readingId) {
        return supersedesId != null && supersedesId == readingId;
    }

    /** Whether somebody took it, or entered it. */
    boolean isBy(long personId) {
        return recordedBy == personId || visit.personId() == personId;
    }

    /** Who took it, or a supervisor, may correct and withdraw it. */
    void checkMayBeChangedBy(Visitor visitor) {
        if (!visitor.supervises() && !isBy(visitor.personId())) {
            throw new ConflictException("only who took a reading, or a supervisor, may change it");
        }
    }

    Instant takenAt() {
        return takenAt;
    }

    /** When and by whom something was written down. */
    record Recorded(Instant at, long by) {}
}
