package dapple.animal;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import java.time.Instant;
import java.time.LocalDate;

/** A length of an animal's body on a day; the newest stands. */
@Entity
class BodyLength {
    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private long id;

    private long siteId;
    private long animalId;
    private double metres;
    private LocalDate measuredOn;
    private Instant recordedAt;
    private long recordedBy;

    @SuppressWarnings("NullAway.Init")
    protected BodyLength() {}

    BodyLength(Animal animal, BodyLengthFacts length, Recorded recorded) {
        this.siteId = animal.siteId();
        this.animalId = animal.id();
        this.metres = length.metres();
        this.measuredOn = length.measuredOn();
        this.recordedAt = recorded.at();
        this.recordedBy = recorded.personId();
    }

    BodyLengthFacts facts() {
        return new BodyLengthFacts(metres, measuredOn);
    }
}
