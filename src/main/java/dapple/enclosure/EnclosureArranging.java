package dapple.enclosure;

import dapple.site.NotFoundException;
import dapple.site.TakenException;
import java.time.Clock;
import java.time.Instant;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.orm.ObjectOptimisticLockingFailureException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Enters the enclosures of a site, changes them, takes them out of use and back into it. */
@Service
class EnclosureArranging {
    private static final long NONE = 0;

    private final RoomRepository rooms;
    private final EnclosureRepository enclosures;
    private final ApplicationEventPublisher events;
    private final Clock clock;

    EnclosureArranging(
            RoomRepository rooms, EnclosureRepository enclosures, ApplicationEventPublisher events, Clock clock) {
        this.rooms = rooms;
        this.enclosures = enclosures;
        this.events = events;
        this.clock = clock;
    }

    @Transactional(readOnly = true)
    public EnclosureDetails get(long siteId, long enclosureId) {
        return find(siteId, enclosureId).details();
    }

    /** What comes after all enclosures of a room. */
    @Transactional(readOnly = true)
    public int nextInWalk(long siteId, long roomId) {
        return enclosures.lastInRoom(siteId, roomId).orElse(0) + 1;
    }

    /**
     * Enters an enclosure.
     *
     * @return its id
     * @throws TakenException if the site has an enclosure with this code, in use or not
     */
    @Transactional
    public long add(long siteId, EnclosureChange added) {
        Room room = room(siteId, added.roomId());
        checkIsFree(siteId, added.code(), NONE);
        return store(new Enclosure(siteId, room, added));
    }

    /**
     * Changes what is said of an enclosure.
     *
     * @param version the version that the form was made from
     * @throws ObjectOptimisticLockingFailureException if somebody has changed the enclosure since
     * @throws TakenException if the site has another enclosure with this code
     */
    @Transactional
    public void change(long siteId, long enclosureId, long version, EnclosureChange change) {
        Enclosure enclosure = find(siteId, enclosureId);
        if (enclosure.details().version() != version) {
            throw new ObjectOptimisticLockingFailureException(Enclosure.class, enclosureId);
        }
        checkIsFree(siteId, change.code(), enclosureId);
        enclosure.moveTo(room(siteId, change.roomId()), change.walkingOrder());
        enclosure.recode(change.code());
        enclosure.resize(change.size());
        enclosure.furnish(change.front(), change.reach());
        store(enclosure);
    }

    /**
     * Takes an enclosure out of use.
     *
     * @throws LivedInException if an animal lives there
     */
    @Transactional
    public void retire(long siteId, long enclosureId) {
        Enclosure enclosure = enclosures.lockAtSite(siteId, enclosureId).orElseThrow(NotFoundException::new);
        Instant now = clock.instant();
        events.publishEvent(new EnclosureLeavesUse(siteId, enclosureId, now));
        enclosure.retire(now);
    }

    @Transactional
    public void returnToUse(long siteId, long enclosureId) {
        find(siteId, enclosureId).returnToUse();
    }

    private Enclosure find(long siteId, long enclosureId) {
        return enclosures.findAtSite(siteId, enclosureId).orElseThrow(NotFoundException::new);
    }

    private Room room(long siteId, long roomId) {
        return rooms.findAtSite(siteId, roomId).orElseThrow(NotFoundException::new);
    }

    private void checkIsFree(long siteId, String code, long except) {
        if (enclosures.isTaken(siteId, code, except)) {
            throw new TakenException("the site has an enclosure with this code");
        }
    }

    /** Of two who enter one code in the same moment, the constraint of the database stops the second. */
    private long store(Enclosure enclosure) {
        try {
            return enclosures.saveAndFlush(enclosure).id();
        } catch (DataIntegrityViolationException taken) {
            throw new TakenException("the site has an enclosure with this code by now");
        }
    }
}
