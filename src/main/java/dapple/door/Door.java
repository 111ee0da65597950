package dapple.door;

import dapple.door.DoorFacts.Replaced;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A code on a door, until another takes its place. */
@Entity
class Door {
    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private long id;

    private long siteId;
    private long enclosureId;

    /** The enclosure while the code counts, so that two never do. */
    private @Nullable Long openEnclosureId;

    private String code;
    private Instant givenAt;
    private long givenBy;
    private @Nullable Instant replacedAt;
    private @Nullable Long replacedBy;
    private @Nullable String replacedBecause;

    @SuppressWarnings("NullAway.Init")
    protected Door() {}

    Door(long siteId, long enclosureId, DoorCode code, Instant givenAt, long givenBy) {
        this.siteId = siteId;
        this.enclosureId = enclosureId;
        this.openEnclosureId = enclosureId;
        this.code = code.text();
        this.givenAt = givenAt;
        this.givenBy = givenBy;
    }

    /** Takes the code out of use. */
    void replace(Replaced replaced) {
        this.openEnclosureId = null;
        this.replacedAt = replaced.at();
        this.replacedBy = replaced.personId();
        this.replacedBecause = replaced.reason();
    }

    DoorFacts facts() {
        return new DoorFacts(enclosureId, new DoorCode(code), givenAt, givenBy, replaced());
    }

    private Optional<Replaced> replaced() {
        return replacedAt == null || replacedBy == null || replacedBecause == null
                ? Optional.empty()
                : Optional.of(new Replaced(replacedAt, replacedBy, replacedBecause));
    }
}
