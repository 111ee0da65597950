package dapple.enclosure;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import org.hibernate.envers.Audited;

/** A room of a site, in the order in which it is walked. */
@Entity
@Audited
class Room {
    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private long id;

    private long siteId;
    private String name;
    private int walkingOrder;

    @Version
    private long version;

    @SuppressWarnings("NullAway.Init")
    protected Room() {}

    Room(long siteId, String name, int walkingOrder) {
        this.siteId = siteId;
        this.name = name;
        this.walkingOrder = walkingOrder;
    }

    long id() {
        return id;
    }

    RoomFacts facts() {
        return new RoomFacts(id, version, name, walkingOrder);
    }

    void rename(String newName) {
        this.name = newName;
    }

    void moveTo(int newWalkingOrder) {
        this.walkingOrder = newWalkingOrder;
    }
}
