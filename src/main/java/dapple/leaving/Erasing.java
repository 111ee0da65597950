package dapple.leaving;

import dapple.keeper.KeptDoses;
import dapple.people.Erased;
import dapple.people.Leaver;
import dapple.people.Leavers;
import dapple.people.People;
import dapple.people.PersonFacts;
import dapple.people.SignedIn;
import dapple.site.ConflictException;
import dapple.site.SiteFacts;
import dapple.site.Sites;
import java.time.Clock;
import java.time.Instant;
import java.time.Period;
import java.util.List;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.orm.ObjectOptimisticLockingFailureException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Erases the names of people who left: at once, or when the time is over that their sites have settled. */
@Service
class Erasing {
    private static final Logger LOG = LoggerFactory.getLogger(Erasing.class);

    private final Leavers leavers;
    private final People people;
    private final KeptDoses doses;
    private final Names names;
    private final Sites sites;
    private final Clock clock;

    Erasing(Leavers leavers, People people, KeptDoses doses, Names names, Sites sites, Clock clock) {
        this.leavers = leavers;
        this.people = people;
        this.doses = doses;
        this.names = names;
        this.sites = sites;
        this.clock = clock;
    }

    /**
     * Erases somebody whose page an administrator has read.
     *
     * @param version of the person that the page showed
     * @throws ObjectOptimisticLockingFailureException if somebody has changed the person since
     * @throws ConflictException if they have not left, are oneself or the last administrator, or use another site too
     */
    @Transactional
    public void eraseNow(SignedIn me, long personId, long version) {
        Leaver leaver = leavers.get(me.siteId(), personId);
        PersonFacts person = people.get(me.siteId(), personId);
        if (personId == me.personId() || !leaver.mayBeErased()) {
            throw new ConflictException("only who has left is erased");
        }
        if (person.version() != version) {
            throw new ObjectOptimisticLockingFailureException("person", personId);
        }
        erase(personId);
    }

    /** Those whose time is over at every site that they worked at. */
    @Transactional(readOnly = true)
    public List<Long> due() {
        return leavers.named().stream()
                .filter(leaver -> leaver.mayBeErased() && isOver(leaver))
                .map(Leaver::personId)
                .toList();
    }

    private boolean isOver(Leaver leaver) {
        Instant left = leaver.leftAt().orElseThrow();
        return leaver.siteIds().stream()
                .allMatch(siteId -> end(siteId, left)
                        .filter(end -> !end.isAfter(clock.instant()))
                        .isPresent());
    }

    private Optional<Instant> end(long siteId, Instant left) {
        SiteFacts site = sites.get(siteId);
        Optional<Period> kept = sites.settings(siteId).namesKept();
        return kept.map(months -> left.atZone(site.timeZone()).plus(months).toInstant());
    }

    /** Everywhere at once, or not at all. */
    @Transactional
    public void erase(long personId) {
        Erased erased = leavers.erase(personId);
        doses.eraseOf(personId);
        names.replace(erased);
        LOG.info("Erased the names of a person: {}", erased.instead().name());
    }
}
