package dapple.round;

import dapple.enclosure.Enclosures;
import dapple.people.People;
import dapple.site.NotFoundException;
import dapple.site.TakenException;
import jakarta.persistence.EntityManager;
import jakarta.persistence.LockModeType;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.orm.ObjectOptimisticLockingFailureException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Plans the rounds of a site and changes them. */
@Service
public class RoundArranging {
    private static final long NONE = 0;

    private final RoundPlanRepository plans;
    private final RoundStopRepository stops;
    private final Enclosures enclosures;
    private final People people;
    private final EntityManager entities;

    RoundArranging(
            RoundPlanRepository plans,
            RoundStopRepository stops,
            Enclosures enclosures,
            People people,
            EntityManager entities) {
        this.plans = plans;
        this.stops = stops;
        this.enclosures = enclosures;
        this.people = people;
        this.entities = entities;
    }

    @Transactional(readOnly = true)
    PlanFacts get(long siteId, long planId) {
        return plans.findAtSite(siteId, planId).map(RoundPlan::facts).orElseThrow(NotFoundException::new);
    }

    /** The enclosures of a round in walking order. */
    @Transactional(readOnly = true)
    List<Long> enclosureIds(long siteId, long planId) {
        get(siteId, planId);
        return stops.ofPlan(planId).stream().map(RoundStop::enclosureId).toList();
    }

    @Transactional(readOnly = true)
    List<PlanFacts> all(long siteId) {
        return plans.all(siteId).stream().map(RoundPlan::facts).toList();
    }

    /**
     * Plans a round.
     *
     * @return its id
     * @throws TakenException if the site has a round of this title
     */
    @Transactional
    public long add(long siteId, PlanDetails details) {
        check(siteId, details, NONE);
        RoundPlan plan = store(new RoundPlan(siteId, details));
        stopAt(plan, details.enclosureIds());
        return plan.id();
    }

    /**
     * Changes a round.
     *
     * @param version the version that the form was made from
     * @throws ObjectOptimisticLockingFailureException if somebody has changed the round since
     * @throws TakenException if the site has another round of this title
     */
    @Transactional
    void change(long siteId, long planId, long version, PlanDetails details) {
        RoundPlan plan = plans.lockAtSite(siteId, planId).orElseThrow(NotFoundException::new);
        if (plan.version() != version) {
            throw new ObjectOptimisticLockingFailureException(RoundPlan.class, planId);
        }
        // Its version rises even where its stops alone change, which are rows of their own.
        entities.lock(plan, LockModeType.PESSIMISTIC_FORCE_INCREMENT);
        check(siteId, details, planId);
        plan.describe(details);
        stopAt(store(plan), details.enclosureIds());
    }

    /** All of it must be the site's own. */
    private void check(long siteId, PlanDetails details, long except) {
        details.givenTo().ofPerson().ifPresent(person -> people.get(siteId, person));
        details.enclosureIds().forEach(enclosure -> enclosures.get(siteId, enclosure));
        if (plans.isTaken(siteId, details.title(), except)) {
            throw new TakenException("the site has a round of this title");
        }
    }

    private RoundPlan store(RoundPlan plan) {
        try {
            return plans.saveAndFlush(plan);
        } catch (DataIntegrityViolationException taken) {
            throw new TakenException("the site has a round of this title by now");
        }
    }

    private void stopAt(RoundPlan plan, List<Long> enclosureIds) {
        Map<Long, RoundStop> before =
                stops.ofPlan(plan.id()).stream().collect(Collectors.toMap(RoundStop::enclosureId, Function.identity()));
        before.values().stream()
                .filter(stop -> !enclosureIds.contains(stop.enclosureId()))
                .forEach(stops::delete);
        IntStream.rangeClosed(1, enclosureIds.size())
                .forEach(place -> stopAt(plan, before, enclosureIds.get(place - 1), place));
        stops.flush();
    }

    private void stopAt(RoundPlan plan, Map<Long, RoundStop> before, long enclosureId, int place) {
        RoundStop stop = before.getOrDefault(enclosureId, new RoundStop(plan, enclosureId, place));
        stop.moveTo(place);
        stops.save(stop);
    }
}
