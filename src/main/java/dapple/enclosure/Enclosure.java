package dapple.enclosure;

import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
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

    @Enumerated(EnumType.STRING)
    private @Nullable FrontKind front;

    @Enumerated(EnumType.STRING)
    private @Nullable ReachKind reachKind;

    private @Nullable Double reachMetres;

    private @Nullable Instant retiredAt;

    @Version
    private long version;

    @SuppressWarnings("NullAway.Init")
    protected Enclosure() {}

    Enclosure(long siteId, Room room, EnclosureChange entered) {
        this.siteId = siteId;
        this.room = room;
        this.code = entered.code();
        this.walkingOrder = entered.walkingOrder();
        this.size = entered.size().orElse(null);
        furnish(entered.front(), entered.reach());
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

    /** Says what its front is and how far its animals come. */
    final void furnish(Optional<FrontKind> newFront, Optional<StatedReach> newReach) {
        this.front = newFront.orElse(null);
        this.reachKind = newReach.map(StatedReach::kind).orElse(null);
        this.reachMetres = newReach.flatMap(StatedReach::metres).orElse(null);
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

    EnclosureFacts facts() {
        return new EnclosureFacts(
                id, code, room.id(), room.facts().name(), size, retiredAt, front, reachKind, reachMetres);
    }

    EnclosureDetails details() {
        return new EnclosureDetails(
                id,
                version,
                new EnclosureChange(
                        room.id(),
                        code,
                        walkingOrder,
                        Optional.ofNullable(size),
                        Optional.ofNullable(front),
                        EnclosureFacts.reach(reachKind, reachMetres)),
                room.facts().name(),
                Optional.ofNullable(retiredAt));
    }
}
