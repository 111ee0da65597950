package dapple.animal;

import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** An animal or a group in an enclosure over [from, to); a wrong one is withdrawn and kept. */
@Entity
class Stay {
    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private long id;

    private long siteId;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "animal_id")
    private Animal animal;

    private long enclosureId;
    private Instant fromAt;
    private @Nullable Instant toAt;

    /** The animal's id while the stay is open: unique, so that an animal is in one place. */
    private @Nullable Long openAnimalId;

    private String reason;
    private Instant recordedAt;
    private long recordedBy;
    private @Nullable Instant withdrawnAt;
    private @Nullable Long withdrawnBy;
    private @Nullable String withdrawnReason;

    @SuppressWarnings("NullAway.Init")
    protected Stay() {}

    Stay(Animal animal, long enclosureId, Instant fromAt, String reason, Recorded recorded) {
        this.siteId = animal.siteId();
        this.animal = animal;
        this.enclosureId = enclosureId;
        this.fromAt = fromAt;
        this.openAnimalId = animal.id();
        this.reason = reason;
        this.recordedAt = recorded.at();
        this.recordedBy = recorded.personId();
    }

    /** The same time in another enclosure. */
    Stay inInstead(long otherEnclosureId, String why, Recorded recorded) {
        Stay right = new Stay(animal, otherEnclosureId, fromAt, why, recorded);
        to().ifPresent(right::end);
        return right;
    }

    long siteId() {
        return siteId;
    }

    Animal animal() {
        return animal;
    }

    long enclosureId() {
        return enclosureId;
    }

    Instant fromAt() {
        return fromAt;
    }

    Optional<Instant> to() {
        return Optional.ofNullable(toAt);
    }

    boolean isWithdrawn() {
        return withdrawnAt != null;
    }

    final void end(Instant at) {
        this.toAt = at;
        this.openAnimalId = null;
    }

    void reopen() {
        this.toAt = null;
        this.openAnimalId = animal.id();
    }

    void withdraw(String why, Recorded recorded) {
        this.withdrawnAt = recorded.at();
        this.withdrawnBy = recorded.personId();
        this.withdrawnReason = why;
        this.openAnimalId = null;
    }

    StayFacts facts() {
        return new StayFacts(id, enclosureId, animal.facts(), fromAt, to());
    }

    StayRecord record() {
        return new StayRecord(facts(), reason, recordedAt, recordedBy, withdrawal());
    }

    private Optional<StayRecord.Withdrawal> withdrawal() {
        return withdrawnAt == null || withdrawnBy == null || withdrawnReason == null
                ? Optional.empty()
                : Optional.of(new StayRecord.Withdrawal(withdrawnAt, withdrawnBy, withdrawnReason));
    }
}
