package dapple.meter;

import jakarta.persistence.CollectionTable;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.OrderColumn;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A meter's uncertainty by its parts. Never edited: the next one takes its place. */
@Entity
@Table(name = "uncertainty_budget")
class MeterBudget {
    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private long id;

    private long siteId;
    private long meterId;

    /** The meter again while this holds, so that no other one does. */
    private @Nullable Long openMeterId;

    /** Expanded uncertainty (95 %) of all parts together, as a share of the reading. */
    private double share;

    private Instant recordedAt;
    private long recordedBy;
    private @Nullable Instant replacedAt;
    private @Nullable Long replacedBy;

    @ElementCollection
    @CollectionTable(name = "uncertainty_part", joinColumns = @JoinColumn(name = "budget_id"))
    @OrderColumn(name = "place")
    private List<StatedPart> parts = new ArrayList<>();

    @SuppressWarnings("NullAway.Init")
    protected MeterBudget() {}

    MeterBudget(long siteId, NewBudget stated, double share, Instant recordedAt) {
        this.siteId = siteId;
        this.meterId = stated.meterId();
        this.openMeterId = stated.meterId();
        this.share = share;
        this.recordedAt = recordedAt;
        this.recordedBy = stated.personId();
        stated.parts().forEach(part -> parts.add(new StatedPart(part)));
    }

    void end(Instant at, long personId) {
        this.openMeterId = null;
        this.replacedAt = at;
        this.replacedBy = personId;
    }

    long id() {
        return id;
    }

    BudgetFacts facts() {
        return new BudgetFacts(id, meterId, parts.stream().map(StatedPart::part).toList(), recordedAt, recordedBy);
    }
}
