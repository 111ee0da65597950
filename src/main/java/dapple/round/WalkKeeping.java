package dapple.round;

import dapple.people.People;
import dapple.people.SignedIn;
import dapple.site.ConflictException;
import dapple.site.NotFoundException;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import org.springframework.orm.ObjectOptimisticLockingFailureException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Keeps what is said of the walks of a round; of one round one at a time. */
@Service
public class WalkKeeping {
    private final RoundPlanRepository plans;
    private final RoundWalkRepository walks;
    private final People people;
    private final Clock clock;

    WalkKeeping(RoundPlanRepository plans, RoundWalkRepository walks, People people, Clock clock) {
        this.plans = plans;
        this.walks = walks;
        this.people = people;
        this.clock = clock;
    }

    /**
     * Begins a walk, or goes on with it; who began it first stays on record. One that was said not to be walked is then
     * walked after all.
     *
     * @throws ConflictException if a later walk has been due since
     */
    @Transactional
    public void begin(SignedIn me, long planId, LocalDate dueOn) {
        RoundPlan plan = lock(me, planId);
        Optional<LocalDate> newest = plan.facts().days().newestUntil(today(me));
        if (newest.filter(dueOn::isBefore).isPresent()) {
            throw new ConflictException("a later walk has been due since");
        }
        RoundWalk walk = walk(plan, dueOn);
        walk.begin(me.personId(), clock.instant());
        walks.saveAndFlush(walk);
    }

    /**
     * Gives one walk to somebody else, or to a role; to whom it is given already, changes nothing.
     *
     * @param version of what the form was made from
     * @throws ObjectOptimisticLockingFailureException if something else was said of the walk since
     */
    @Transactional
    public void give(SignedIn me, WalkKey key, long version, GivenTo to) {
        to.ofPerson().ifPresent(person -> people.get(me.siteId(), person));
        RoundPlan plan = lock(me, key.planId());
        RoundWalk walk = walk(plan, key.dueOn());
        if (walk.said().givenTo().orElse(plan.facts().givenTo()).equals(to)) {
            return;
        }
        check(walk, version);
        walk.give(to, me.personId(), clock.instant());
        walks.saveAndFlush(walk);
    }

    /**
     * Says why a walk is or was not walked; what was said already, changes nothing.
     *
     * @param version of what the form was made from
     * @throws ObjectOptimisticLockingFailureException if something else was said of the walk since
     */
    @Transactional
    public void excuse(SignedIn me, WalkKey key, long version, NotWalked why) {
        RoundWalk walk = walk(lock(me, key.planId()), key.dueOn());
        if (walk.said().excuse().filter(why::isSaidBy).isPresent()) {
            return;
        }
        check(walk, version);
        walk.excuse(new Excuse(why.reason(), why.text(), me.personId(), clock.instant()));
        walks.saveAndFlush(walk);
    }

    private RoundPlan lock(SignedIn me, long planId) {
        return plans.lockAtSite(me.siteId(), planId).orElseThrow(NotFoundException::new);
    }

    private RoundWalk walk(RoundPlan plan, LocalDate dueOn) {
        return walks.findByPlanIdAndDueOn(plan.id(), dueOn)
                .or(() ->
                        Optional.of(dueOn).filter(plan.facts().days()::includes).map(day -> new RoundWalk(plan, day)))
                .orElseThrow(NotFoundException::new);
    }

    private static void check(RoundWalk walk, long version) {
        if (walk.said().version() != version) {
            throw new ObjectOptimisticLockingFailureException(RoundWalk.class, walk.dueOn());
        }
    }

    private LocalDate today(SignedIn me) {
        return LocalDate.ofInstant(clock.instant(), me.zone());
    }
}
