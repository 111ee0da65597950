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

/** An animal in an enclosure over [from, to). */
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

    private Instant recordedAt;
    private long recordedBy;

    @SuppressWarnings("NullAway.Init")
    protected Stay() {}

    Stay(Animal animal, Arrival arrival, Instant recordedAt) {
        this.siteId = animal.siteId();
        this.animal = animal;
        this.enclosureId = arrival.enclosureId();
        this.fromAt = arrival.at();
        this.openAnimalId = animal.facts().id();
        this.recordedAt = recordedAt;
        this.recordedBy = arrival.personId();
    }

    Instant fromAt() {
        return fromAt;
    }

    void end(Instant at) {
        this.toAt = at;
        this.openAnimalId = null;
    }

    StayFacts facts() {
        return new StayFacts(id, enclosureId, animal.facts(), fromAt, Optional.ofNullable(toAt));
    }
}
