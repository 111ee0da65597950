package dapple.review;

import dapple.light.judging.State;
import dapple.reading.RecordedReading;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;

/** What somebody decided about a finding. Never edited. */
@Entity
@Immutable
class Decision {
    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private long id;

    private long siteId;
    private long enclosureId;

    @Enumerated(EnumType.STRING)
    private DecisionKind kind;

    @Enumerated(EnumType.STRING)
    private State state;

    private @Nullable Long readingId;
    private String text;
    private @Nullable LocalDate untilOn;
    private @Nullable Long givenTo;
    private boolean ownReading;
    private UUID entryKey;
    private Instant madeAt;
    private long madeBy;

    @SuppressWarnings("NullAway.Init")
    protected Decision() {}

    Decision(long siteId, Basis basis, NewDecision decision, long madeBy, Instant madeAt) {
        this.siteId = siteId;
        this.enclosureId = basis.enclosureId();
        this.state = basis.state();
        this.readingId = basis.reading().map(RecordedReading::id).orElse(null);
        this.ownReading = decision.kind() == DecisionKind.ACCEPTED && basis.isReadBy(madeBy);
        this.kind = decision.kind();
        this.text = decision.text();
        this.untilOn = decision.until().orElse(null);
        this.givenTo = decision.givenTo().orElse(null);
        this.entryKey = decision.key();
        this.madeAt = madeAt;
        this.madeBy = madeBy;
    }

    DecisionFacts facts() {
        return new DecisionFacts(
                id,
                enclosureId,
                kind,
                state,
                text,
                Optional.ofNullable(untilOn),
                Optional.ofNullable(givenTo),
                ownReading,
                madeAt,
                madeBy);
    }

    /** What a finding rests on when somebody decides about it: the state, and the reading if there is one. */
    record Basis(long enclosureId, State state, Optional<RecordedReading> reading) {
        boolean isReadBy(long personId) {
            return reading.filter(one -> one.isReadBy(personId)).isPresent();
        }
    }
}
