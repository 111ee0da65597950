package dapple.round;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import org.hibernate.envers.Audited;

/** An enclosure in a round. */
@Entity
@Audited
class RoundStop {
    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private long id;

    private long siteId;
    private long planId;
    private long enclosureId;
    private int place;

    @SuppressWarnings("NullAway.Init")
    protected RoundStop() {}

    RoundStop(RoundPlan plan, long enclosureId, int place) {
        this.siteId = plan.siteId();
        this.planId = plan.id();
        this.enclosureId = enclosureId;
        this.place = place;
    }

    long enclosureId() {
        return enclosureId;
    }

    void moveTo(int newPlace) {
        this.place = newPlace;
    }
}
