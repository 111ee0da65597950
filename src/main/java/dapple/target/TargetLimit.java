package dapple.target;

import dapple.light.judging.Band;
import dapple.light.quantity.Quantity;
import dapple.site.SourceMark;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import org.jspecify.annotations.Nullable;

/** One cell of a target version. */
@Entity
class TargetLimit {
    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private long id;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "target_version_id")
    private TargetVersion version;

    @Enumerated(EnumType.STRING)
    private Quantity quantity;

    @Enumerated(EnumType.STRING)
    private LimitPlace place;

    private @Nullable Double low;
    private double high;

    @Enumerated(EnumType.STRING)
    private SourceMark mark;

    private String source;

    @SuppressWarnings("NullAway.Init")
    protected TargetLimit() {}

    TargetLimit(TargetVersion version, SourcedLimit limit) {
        this.version = version;
        this.quantity = limit.quantity();
        this.place = limit.place();
        this.low = limit.band().low() > 0 ? Double.valueOf(limit.band().low()) : null;
        this.high = limit.band().high();
        this.mark = limit.mark();
        this.source = limit.source();
    }

    SourcedLimit sourced() {
        return new SourcedLimit(quantity, place, new Band(low == null ? 0 : low, high), mark, source);
    }
}
