package dapple.review;

import dapple.light.judging.State;
import dapple.people.People;
import dapple.people.SignedIn;
import dapple.reading.Readings;
import dapple.review.Decision.Basis;
import dapple.site.NotFoundException;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.transaction.support.TransactionTemplate;

/** Records what is decided about findings, each decision once. */
@Service
public class Deciding {
    private final DecisionRepository decisions;
    private final Standings standings;
    private final Readings readings;
    private final People people;
    private final Clock clock;
    private final TransactionTemplate transaction;

    Deciding(
            DecisionRepository decisions,
            Standings standings,
            Readings readings,
            People people,
            Clock clock,
            TransactionTemplate transaction) {
        this.decisions = decisions;
        this.standings = standings;
        this.readings = readings;
        this.people = people;
        this.clock = clock;
        this.transaction = transaction;
    }

    /**
     * Records a decision about how an enclosure stands now.
     *
     * @throws RefusedDecision if who decides may not, or what stands must not be accepted
     * @throws NotFoundException if the enclosure, or the person that it is given to, is not of this site
     */
    public void decide(SignedIn me, long enclosureId, NewDecision decision) {
        Basis basis = basis(me, enclosureId);
        check(me, basis, decision);
        try {
            transaction.executeWithoutResult(status -> store(me, basis, decision));
        } catch (DataIntegrityViolationException sentAtOnce) {
            if (!decisions.existsByEntryKey(decision.key())) {
                throw sentAtOnce;
            }
        }
    }

    private void store(SignedIn me, Basis basis, NewDecision decision) {
        if (!decisions.existsByEntryKey(decision.key())) {
            decisions.saveAndFlush(new Decision(me.siteId(), basis, decision, me.personId(), clock.instant()));
        }
    }

    private Basis basis(SignedIn me, long enclosureId) {
        Standing standing =
                standings.of(me.siteId(), enclosureId, me.settings()).standing();
        State state = standing.state().orElseThrow(NotFoundException::new);
        return standing.deciding()
                .flatMap(Standing.AtPoint::view)
                .map(view -> readings.recorded(me.siteId(), view.reading().readingId()))
                .map(reading -> new Basis(enclosureId, state, Optional.of(reading)))
                .orElseGet(() -> new Basis(enclosureId, state, Optional.empty()));
    }

    private void check(SignedIn me, Basis basis, NewDecision decision) {
        if (decision.kind() == DecisionKind.ACCEPTED) {
            if (basis.state() == State.OVER_CEILING) {
                throw new RefusedDecision(RefusedDecision.Reason.OVER_CEILING);
            }
            if (basis.isReadBy(me.personId()) && !me.settings().onePerson()) {
                throw new RefusedDecision(RefusedDecision.Reason.OWN_READING);
            }
        }
        decision.givenTo().ifPresent(person -> people.get(me.siteId(), person));
    }

    @Transactional(readOnly = true)
    Decided since(long siteId, Instant since) {
        return Decided.of(decisions.since(siteId, since));
    }

    /** All that was ever decided about one enclosure, oldest first. */
    @Transactional(readOnly = true)
    public List<DecisionFacts> of(long siteId, long enclosureId) {
        return decisions.of(siteId, enclosureId).stream().map(Decision::facts).toList();
    }
}
