package dapple.lamp;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import org.hibernate.envers.Audited;
import org.jspecify.annotations.Nullable;

/** One physical lamp. Broken or worn out it stays on record. */
@Entity
@Audited
class Lamp {
    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private long id;

    private long siteId;
    private long lampModelId;
    private String tag;
    private @Nullable Double burnHoursAtEntry;
    private @Nullable LocalDate boughtOn;
    private String storePlace;
    private @Nullable Instant retiredAt;

    @Enumerated(EnumType.STRING)
    private @Nullable RetiredFor retiredFor;

    @Version
    private long version;

    @SuppressWarnings("NullAway.Init")
    protected Lamp() {}

    Lamp(long siteId, NewLamp said) {
        this.siteId = siteId;
        become(said);
    }

    final void become(NewLamp said) {
        this.lampModelId = said.modelId();
        this.tag = said.tag();
        this.burnHoursAtEntry = said.burnHoursAtEntry().orElse(null);
        this.boughtOn = said.boughtOn().orElse(null);
        this.storePlace = said.storePlace();
    }

    /** Keeps the first instant and reason if it is out of use already. */
    void retire(Instant at, RetiredFor why) {
        if (retiredAt == null) {
            this.retiredAt = at;
            this.retiredFor = why;
        }
    }

    void returnToUse() {
        this.retiredAt = null;
        this.retiredFor = null;
    }

    long id() {
        return id;
    }

    long version() {
        return version;
    }

    NewLamp state() {
        return new NewLamp(
                tag, lampModelId, Optional.ofNullable(burnHoursAtEntry), Optional.ofNullable(boughtOn), storePlace);
    }

    Optional<Instant> retiredAt() {
        return Optional.ofNullable(retiredAt);
    }

    Optional<RetiredFor> retiredFor() {
        return Optional.ofNullable(retiredFor);
    }
}
