package dapple.enclosure;

import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.Version;
import java.time.Instant;
import java.util.Optional;
import org.hibernate.envers.Audited;
import org.jspecify.annotations.Nullable;

/** One animal space. Without a size it works fully as measured only. */
@Entity
@Audited
class Enclosure {
    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private long id;

    private long siteId;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "room_id")
    private Room room;

    private String code;
    private int walkingOrder;

    @Embedded
    private @Nullable InnerSize size;

    private @Nullable Instant retiredAt;

    @Version
    private long version;

    @SuppressWarnings("NullAway.Init")
    protected Enclosure() {}

    Enclosure(long siteId, Room room, String code, int walkingOrder, Optional<InnerSize> size) {
        this.siteId = siteId;
        this.room = room;
        this.code = code;
        this.walkingOrder = walkingOrder;
        this.size = size.orElse(null);
    }

    long id() {
        return id;
    }

    void moveTo(Room newRoom, int newWalkingOrder) {
        this.room = newRoom;
        this.walkingOrder = newWalkingOrder;
    }

    void recode(String newCode) {
        this.code = newCode;
    }

    void resize(Optional<InnerSize> newSize) {
        this.size = newSize.orElse(null);
    }

    /** Keeps the first instant if it is out of use already. */
    void retire(Instant at) {
        if (retiredAt == null) {
            this.retiredAt = at;
        }
    }

    void returnToUse() {
        this.retiredAt = null;
    }

    EnclosureDetails details() {
        return new EnclosureDetails(
                id,
                version,
                new EnclosureChange(room.id(), code, walkingOrder, Optional.ofNullable(size)),
                room.facts().name(),
                Optional.ofNullable(retiredAt));
    }
}
