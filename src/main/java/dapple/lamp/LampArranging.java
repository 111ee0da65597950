package dapple.lamp;

import dapple.site.NotFoundException;
import dapple.site.TakenException;
import java.time.Clock;
import java.time.Instant;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.orm.ObjectOptimisticLockingFailureException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Enters the lamps of a site, changes them, takes them out of use and back into it. */
@Service
public class LampArranging {
    private static final long NONE = 0;

    private final LampModelRepository models;
    private final LampRepository lamps;
    private final ApplicationEventPublisher events;
    private final Clock clock;

    LampArranging(LampModelRepository models, LampRepository lamps, ApplicationEventPublisher events, Clock clock) {
        this.models = models;
        this.lamps = lamps;
        this.events = events;
        this.clock = clock;
    }

    @Transactional(readOnly = true)
    public LampDetails get(long siteId, long lampId) {
        return LampDetails.of(find(siteId, lampId));
    }

    /**
     * Enters a lamp.
     *
     * @return its id
     * @throws TakenException if the site has a lamp with this tag, in use or not
     */
    @Transactional
    public long add(long siteId, NewLamp added) {
        checkModel(siteId, added.modelId());
        checkIsFree(siteId, added.tag(), NONE);
        return store(new Lamp(siteId, added));
    }

    /**
     * Changes what is said of a lamp.
     *
     * @param version the version that the form was made from
     * @throws ObjectOptimisticLockingFailureException if somebody has changed the lamp since
     * @throws TakenException if the site has another lamp with this tag
     */
    @Transactional
    public void change(long siteId, long lampId, long version, NewLamp change) {
        Lamp lamp = find(siteId, lampId);
        if (lamp.version() != version) {
            throw new ObjectOptimisticLockingFailureException(Lamp.class, lampId);
        }
        checkModel(siteId, change.modelId());
        checkIsFree(siteId, change.tag(), lampId);
        lamp.become(change);
        store(lamp);
    }

    /**
     * Takes a lamp out of use.
     *
     * @throws StillFittedException if it hangs in an enclosure
     */
    @Transactional
    public void retire(long siteId, long lampId, RetiredFor why) {
        Lamp lamp = lamps.lockAtSite(siteId, lampId).orElseThrow(NotFoundException::new);
        Instant now = clock.instant();
        events.publishEvent(new LampLeavesUse(siteId, lampId, now));
        lamp.retire(now, why);
    }

    @Transactional
    public void returnToUse(long siteId, long lampId) {
        lamps.lockAtSite(siteId, lampId).orElseThrow(NotFoundException::new).returnToUse();
    }

    private Lamp find(long siteId, long lampId) {
        return lamps.findAtSite(siteId, lampId).orElseThrow(NotFoundException::new);
    }

    private void checkModel(long siteId, long modelId) {
        if (models.findAtSite(siteId, modelId).isEmpty()) {
            throw new NotFoundException();
        }
    }

    private void checkIsFree(long siteId, String tag, long except) {
        if (lamps.isTaken(siteId, tag, except)) {
            throw new TakenException("the site has a lamp with this tag");
        }
    }

    /** Of two who enter one tag in the same moment, the constraint of the database stops the second. */
    private long store(Lamp lamp) {
        try {
            return lamps.saveAndFlush(lamp).id();
        } catch (DataIntegrityViolationException taken) {
            throw new TakenException("the site has a lamp with this tag by now");
        }
    }
}
