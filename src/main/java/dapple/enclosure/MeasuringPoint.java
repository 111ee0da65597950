package dapple.enclosure;

import dapple.light.judging.PointRole;
import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import java.time.Instant;
import java.util.Optional;
import org.hibernate.envers.Audited;
import org.jspecify.annotations.Nullable;

/** A named place of an enclosure where readings are taken. */
@Entity
@Audited
class MeasuringPoint {
    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private long id;

    private long siteId;
    private long enclosureId;
    private String code;
    private String place;

    @Enumerated(EnumType.STRING)
    private PointRole role;

    @Enumerated(EnumType.STRING)
    private Facing facing;

    private int walkingOrder;

    @Embedded
    private @Nullable Position position;

    private @Nullable Instant retiredAt;

    @Version
    private long version;

    @SuppressWarnings("NullAway.Init")
    protected MeasuringPoint() {}

    MeasuringPoint(long siteId, long enclosureId, NewPoint point, int walkingOrder) {
        this.siteId = siteId;
        this.enclosureId = enclosureId;
        this.code = point.code();
        this.place = point.place();
        this.role = point.role();
        this.facing = point.facing();
        this.walkingOrder = walkingOrder;
        this.position = point.position().orElse(null);
    }

    /** What somebody found it to be when they looked again. */
    void describe(NewPoint point, int newWalkingOrder) {
        this.code = point.code();
        this.place = point.place();
        this.role = point.role();
        this.facing = point.facing();
        this.walkingOrder = newWalkingOrder;
        this.position = point.position().orElse(null);
    }

    /** Keeps the first instant if it is retired already. */
    void retire(Instant at) {
        if (retiredAt == null) {
            this.retiredAt = at;
        }
    }

    void returnToUse() {
        this.retiredAt = null;
    }

    PointDetails details() {
        return new PointDetails(facts(), version, walkingOrder, Optional.ofNullable(retiredAt));
    }

    PointFacts facts() {
        return new PointFacts(id, enclosureId, code, place, role, facing, Optional.ofNullable(position));
    }
}
