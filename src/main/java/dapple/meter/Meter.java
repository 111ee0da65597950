package dapple.meter;

import dapple.light.judging.MeterUncertainty;
import dapple.light.quantity.Quantity;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import java.time.Instant;
import org.hibernate.envers.Audited;
import org.jspecify.annotations.Nullable;

/** An instrument that shows one quantity. */
@Entity
@Audited
class Meter {
    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private long id;

    private long siteId;
    private String code;
    private String description;

    @Enumerated(EnumType.STRING)
    private Quantity quantity;

    private double resolution;
    private @Nullable Instant retiredAt;

    @Version
    private long version;

    @SuppressWarnings("NullAway.Init")
    protected Meter() {}

    Meter(long siteId, String code, String description, Quantity quantity, double resolution) {
        this.siteId = siteId;
        this.code = code;
        this.description = description;
        this.quantity = quantity;
        this.resolution = resolution;
    }

    MeterFacts facts() {
        return new MeterFacts(id, code, description, quantity, MeterUncertainty.of(quantity, resolution));
    }
}
