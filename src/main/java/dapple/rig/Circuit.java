package dapple.rig;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import java.util.Optional;
import org.hibernate.envers.Audited;
import org.jspecify.annotations.Nullable;

/** An electric circuit of a room or of the whole site. */
@Entity
@Audited
class Circuit {
    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private long id;

    private long siteId;
    private @Nullable Long roomId;
    private String name;

    @Version
    private long version;

    @SuppressWarnings("NullAway.Init")
    protected Circuit() {}

    @SuppressWarnings("NullAway.Init")
    Circuit(long siteId, Optional<Long> roomId, String name) {
        this.siteId = siteId;
        become(roomId, name);
    }

    final void become(Optional<Long> newRoomId, String newName) {
        this.roomId = newRoomId.orElse(null);
        this.name = newName;
    }

    CircuitDetails details() {
        return new CircuitDetails(facts(), version);
    }

    CircuitFacts facts() {
        return new CircuitFacts(id, name, Optional.ofNullable(roomId));
    }
}
