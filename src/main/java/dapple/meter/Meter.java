package dapple.meter;

import dapple.light.quantity.Quantity;
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
import org.hibernate.annotations.Formula;
import org.hibernate.envers.Audited;
import org.hibernate.envers.NotAudited;
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
    private @Nullable Double rangeLow;
    private @Nullable Double rangeHigh;
    private @Nullable Double statedShare;
    private @Nullable String statedSource;
    private @Nullable String lender;
    private @Nullable LocalDate borrowedUntil;
    private @Nullable String note;
    private @Nullable Instant retiredAt;

    /** Of the newest calibration that holds. */
    @NotAudited
    @Formula("""
            (select max(c.due_on) from calibration c where c.meter_id = id and c.open_calibrated_at =
            (select max(d.open_calibrated_at) from calibration d where d.meter_id = id))""")
    private @Nullable LocalDate calibrationDueOn;

    /** Expanded uncertainty by the budget that stands. */
    @NotAudited
    @Formula("(select b.share from uncertainty_budget b where b.open_meter_id = id)")
    private @Nullable Double budgetShare;

    @Version
    private long version;

    @SuppressWarnings("NullAway.Init")
    protected Meter() {}

    Meter(long siteId, String code, String description, Quantity quantity, double resolution) {
        this(siteId, quantity, MeterChange.of(code, description, resolution));
    }

    Meter(long siteId, Quantity quantity, MeterChange state) {
        this.siteId = siteId;
        this.quantity = quantity;
        this.code = state.code();
        this.description = state.description();
        become(state);
    }

    final void become(MeterChange state) {
        this.code = state.code();
        this.description = state.description();
        this.resolution = state.resolution();
        this.rangeLow = state.range().map(MeterRange::low).orElse(null);
        this.rangeHigh = state.range().map(MeterRange::high).orElse(null);
        this.statedShare = state.stated().map(StatedUncertainty::share).orElse(null);
        this.statedSource = state.stated().map(StatedUncertainty::source).orElse(null);
        this.lender = state.loan().map(Loan::lender).orElse(null);
        this.borrowedUntil = state.loan().flatMap(Loan::until).orElse(null);
        this.note = state.note().isEmpty() ? null : state.note();
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

    long id() {
        return id;
    }

    MeterFacts facts() {
        return new MeterFacts(
                id,
                code,
                description,
                quantity,
                resolution,
                budgetShare,
                statedShare,
                lender,
                borrowedUntil,
                rangeLow,
                rangeHigh,
                calibrationDueOn);
    }

    MeterDetails details() {
        MeterChange state = new MeterChange(
                code,
                description,
                resolution,
                MeterRange.of(rangeLow, rangeHigh),
                stated(),
                loan(),
                note == null ? "" : note);
        return new MeterDetails(facts(), version, state, Optional.ofNullable(retiredAt));
    }

    private Optional<StatedUncertainty> stated() {
        return statedShare == null || statedSource == null
                ? Optional.empty()
                : Optional.of(new StatedUncertainty(statedShare, statedSource));
    }

    private Optional<Loan> loan() {
        return Optional.ofNullable(lender).map(whose -> new Loan(whose, Optional.ofNullable(borrowedUntil)));
    }
}
