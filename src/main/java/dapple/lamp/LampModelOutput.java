package dapple.lamp;

import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import org.hibernate.envers.Audited;

/** What lamps of a model give of one quantity. */
@Entity
@Audited
class LampModelOutput {
    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private long id;

    private long siteId;
    private long lampModelId;

    @Embedded
    private LampOutput output;

    @Version
    private long version;

    @SuppressWarnings("NullAway.Init")
    protected LampModelOutput() {}

    LampModelOutput(long siteId, long lampModelId, LampOutput output) {
        this.siteId = siteId;
        this.lampModelId = lampModelId;
        this.output = output;
    }

    void become(LampOutput changed) {
        this.output = changed;
    }

    long lampModelId() {
        return lampModelId;
    }

    LampOutput output() {
        return output;
    }

    long version() {
        return version;
    }
}
