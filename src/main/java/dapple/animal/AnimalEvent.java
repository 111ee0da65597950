package dapple.animal;

import dapple.animal.HeadCount.Step;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Something that happened to an animal or a group; never changed. */
@Entity
class AnimalEvent {
    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private long id;

    private long siteId;
    private long animalId;

    @Enumerated(EnumType.STRING)
    private Happening kind;

    private Instant at;
    private @Nullable Integer countChange;
    private @Nullable Integer counted;
    private @Nullable Long relatedAnimalId;
    private String reason;
    private @Nullable UUID entryKey;
    private Instant recordedAt;
    private long recordedBy;

    @SuppressWarnings("NullAway.Init")
    protected AnimalEvent() {}

    AnimalEvent(Animal animal, Step step, Happened how, Recorded recorded) {
        this.siteId = animal.siteId();
        this.animalId = animal.id();
        this.kind = step.kind();
        this.at = step.at();
        if (step.kind() == Happening.RECOUNT) {
            this.counted = step.number();
        } else {
            this.countChange = step.number();
        }
        this.reason = how.reason();
        this.recordedAt = recorded.at();
        this.recordedBy = recorded.personId();
    }

    void with(Animal related) {
        this.relatedAnimalId = related.id();
    }

    /** Under the key of the form, which the other event of a split or a merge has not. */
    void under(UUID key) {
        this.entryKey = key;
    }

    Optional<Long> relatedId() {
        return Optional.ofNullable(relatedAnimalId);
    }

    long animalId() {
        return animalId;
    }

    boolean isRecordedBy(Instant instant) {
        return !recordedAt.isAfter(instant);
    }

    Step step() {
        Integer number = counted == null ? countChange : counted;
        return new Step(kind, at, number == null ? 0 : number);
    }

    AnimalEventFacts facts() {
        return new AnimalEventFacts(id, kind, at, step().number(), relatedId(), reason, recordedAt, recordedBy);
    }
}
