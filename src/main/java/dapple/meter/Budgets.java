package dapple.meter;

import java.time.Clock;
import java.util.Optional;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.orm.ObjectOptimisticLockingFailureException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The uncertainties of meters by their parts: stated anew, never edited. */
@Service
class Budgets {
    private final MeterBudgetRepository budgets;
    private final MeterRegister meters;
    private final ApplicationEventPublisher events;
    private final Clock clock;

    Budgets(MeterBudgetRepository budgets, MeterRegister meters, ApplicationEventPublisher events, Clock clock) {
        this.budgets = budgets;
        this.meters = meters;
        this.events = events;
        this.clock = clock;
    }

    @Transactional(readOnly = true)
    public Optional<BudgetFacts> of(long siteId, long meterId) {
        return budgets.standing(siteId, meterId).map(MeterBudget::facts);
    }

    /**
     * States a budget in place of another; without parts none stands from now on.
     *
     * @throws ObjectOptimisticLockingFailureException if somebody has stated another one since the form was made
     */
    @Transactional
    public void state(long siteId, NewBudget stated) {
        MeterDetails meter = meters.get(siteId, stated.meterId());
        Optional<MeterBudget> before = budgets.standing(siteId, stated.meterId());
        if (before.map(MeterBudget::id).orElse(NewBudget.NONE) != stated.seen()) {
            throw changedMeanwhile(stated);
        }
        before.ifPresent(budget -> {
            budget.end(clock.instant(), stated.personId());
            budgets.saveAndFlush(budget);
        });
        if (!stated.parts().isEmpty()) {
            store(siteId, stated, meter.state().resolution());
        }
        events.publishEvent(new UncertaintyStated(siteId, stated.meterId()));
    }

    private void store(long siteId, NewBudget stated, double resolution) {
        double share =
                BudgetFacts.combined(stated.parts(), resolution).forJudging().share();
        try {
            budgets.saveAndFlush(new MeterBudget(siteId, stated, share, clock.instant()));
        } catch (DataIntegrityViolationException taken) {
            throw changedMeanwhile(stated);
        }
    }

    private static ObjectOptimisticLockingFailureException changedMeanwhile(NewBudget stated) {
        return new ObjectOptimisticLockingFailureException(MeterBudget.class, stated.meterId());
    }
}
