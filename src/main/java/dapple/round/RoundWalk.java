package dapple.round;

import dapple.people.Role;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import org.hibernate.envers.Audited;
import org.jspecify.annotations.Nullable;

/** What was said of one walk of a round. */
@Entity
@Audited
class RoundWalk {
    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private long id;

    private long siteId;
    private long planId;
    private LocalDate dueOn;
    private @Nullable Long givenPersonId;

    @Enumerated(EnumType.STRING)
    private @Nullable Role givenRole;

    private @Nullable Long givenBy;
    private @Nullable Instant givenAt;
    private @Nullable Long begunBy;
    private @Nullable Instant begunAt;

    @Enumerated(EnumType.STRING)
    private Excuse.@Nullable Reason excuse;

    private @Nullable String excuseText;
    private @Nullable Long excusedBy;
    private @Nullable Instant excusedAt;

    /** None before it is stored. */
    @Version
    private @Nullable Long version;

    @SuppressWarnings("NullAway.Init")
    protected RoundWalk() {}

    RoundWalk(RoundPlan plan, LocalDate dueOn) {
        this.siteId = plan.siteId();
        this.planId = plan.id();
        this.dueOn = dueOn;
    }

    LocalDate dueOn() {
        return dueOn;
    }

    /** Keeps who began it first; one that is walked after all has no excuse. */
    void begin(long by, Instant at) {
        takeBackExcuse();
        if (begunAt == null) {
            this.begunAt = at;
            this.begunBy = by;
        }
    }

    void give(GivenTo to, long by, Instant at) {
        this.givenPersonId = to.ofPerson().orElse(null);
        this.givenRole = to.ofRole().orElse(null);
        this.givenBy = by;
        this.givenAt = at;
    }

    void excuse(Excuse why) {
        this.excuse = why.reason();
        this.excuseText = why.text();
        this.excusedBy = why.by();
        this.excusedAt = why.at();
    }

    void takeBackExcuse() {
        this.excuse = null;
        this.excuseText = null;
        this.excusedBy = null;
        this.excusedAt = null;
    }

    WalkSaid said() {
        Optional<Begun> begun = Optional.ofNullable(begunAt).map(at -> new Begun(at, Objects.requireNonNull(begunBy)));
        Optional<Excuse> why = Optional.ofNullable(excuse)
                .map(reason -> new Excuse(
                        reason,
                        Objects.requireNonNullElse(excuseText, ""),
                        Objects.requireNonNull(excusedBy),
                        Objects.requireNonNull(excusedAt)));
        long shown = Optional.ofNullable(version).map(stored -> stored + 1).orElse(0L);
        return new WalkSaid(shown, GivenTo.of(givenPersonId, givenRole), begun, why);
    }
}
