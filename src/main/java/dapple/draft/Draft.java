package dapple.draft;

import dapple.draft.DraftFacts.Said;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A rig that is only thought of. */
@Entity
class Draft {
    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private long id;

    private long siteId;
    private long enclosureId;
    private String name;
    private String parts;
    private Instant madeAt;
    private long madeBy;
    private Instant changedAt;
    private long changedBy;
    private @Nullable Instant closedAt;
    private @Nullable Long installedBy;

    @Version
    private long version;

    @SuppressWarnings("NullAway.Init")
    protected Draft() {}

    Draft(DraftPlace place, String name, DraftRig rig, Said made) {
        this.siteId = place.siteId();
        this.enclosureId = place.enclosureId();
        this.name = name;
        this.parts = DraftText.write(rig);
        this.madeAt = made.at();
        this.madeBy = made.personId();
        this.changedAt = made.at();
        this.changedBy = made.personId();
    }

    void become(String newName, DraftRig rig, Said changed) {
        this.name = newName;
        this.parts = DraftText.write(rig);
        this.changedAt = changed.at();
        this.changedBy = changed.personId();
    }

    void discard(Said discarded) {
        this.closedAt = discarded.at();
        this.changedAt = discarded.at();
        this.changedBy = discarded.personId();
    }

    void install(long rigChangeId, Said installed) {
        discard(installed);
        this.installedBy = rigChangeId;
    }

    long version() {
        return version;
    }

    boolean isOpen() {
        return closedAt == null;
    }

    DraftFacts facts() {
        return new DraftFacts(
                id,
                enclosureId,
                version,
                name,
                DraftText.read(parts),
                new Said(madeBy, madeAt),
                new Said(changedBy, changedAt),
                Optional.ofNullable(closedAt),
                Optional.ofNullable(installedBy));
    }
}
