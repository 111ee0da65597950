package dapple.draft;

import dapple.draft.DraftFacts.Said;
import dapple.enclosure.Enclosures;
import dapple.lamp.Lamps;
import dapple.site.ConflictException;
import dapple.site.NotFoundException;
import dapple.site.TakenException;
import java.time.Clock;
import java.util.List;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.data.domain.Limit;
import org.springframework.orm.ObjectOptimisticLockingFailureException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The drafts of enclosures: made, changed, discarded. */
@Service
public class Drafts {
    /** Listed at once, those in work first. */
    public static final int LISTED = 30;

    private static final long NONE = 0;

    private final DraftRepository drafts;
    private final Enclosures enclosures;
    private final Lamps lamps;
    private final Clock clock;

    Drafts(DraftRepository drafts, Enclosures enclosures, Lamps lamps, Clock clock) {
        this.drafts = drafts;
        this.enclosures = enclosures;
        this.lamps = lamps;
        this.clock = clock;
    }

    /**
     * Begins a draft.
     *
     * @return its id
     * @throws TakenException if the enclosure has a draft of this name
     */
    @Transactional
    public long make(DraftPlace place, String name, DraftRig rig, long personId) {
        enclosures.get(place.siteId(), place.enclosureId());
        requireFree(place, name, NONE);
        return store(new Draft(place, name, rig, said(personId))).id();
    }

    /**
     * Keeps a draft as it is now.
     *
     * @throws ObjectOptimisticLockingFailureException if somebody has changed it since
     * @throws TakenException if the enclosure has another draft of this name
     * @throws ConflictException if it is closed
     */
    @Transactional
    public void change(DraftPlace place, DraftSeen seen, String name, DraftRig rig, long personId) {
        Draft draft = open(place, seen);
        requireFree(place, name, seen.draftId());
        draft.become(name, rig, said(personId));
        store(draft);
    }

    /**
     * Closes a draft that is not wanted any more; it stays on record.
     *
     * @throws ObjectOptimisticLockingFailureException if somebody has changed it since
     * @throws ConflictException if it is closed
     */
    @Transactional
    public void discard(DraftPlace place, DraftSeen seen, long personId) {
        Draft draft = open(place, seen);
        draft.discard(said(personId));
        drafts.saveAndFlush(draft);
    }

    /** Within the transaction that changes the rig. */
    @Transactional
    void install(DraftPlace place, DraftSeen seen, long rigChangeId, long personId) {
        Draft draft = open(place, seen);
        draft.install(rigChangeId, said(personId));
        drafts.saveAndFlush(draft);
    }

    private Draft open(DraftPlace place, DraftSeen seen) {
        Draft draft = find(place, seen.draftId());
        if (draft.version() != seen.version()) {
            throw new ObjectOptimisticLockingFailureException(Draft.class, seen.draftId());
        }
        if (!draft.isOpen()) {
            throw new ConflictException("the draft is closed");
        }
        return draft;
    }

    private void requireFree(DraftPlace place, String name, long except) {
        if (drafts.isTaken(place.siteId(), place.enclosureId(), name, except)) {
            throw new TakenException("the enclosure has a draft of this name");
        }
    }

    /** Of two who enter one name in the same moment, the constraint of the database stops the second. */
    private DraftFacts store(Draft draft) {
        try {
            return drafts.saveAndFlush(draft).facts();
        } catch (DataIntegrityViolationException taken) {
            throw new TakenException("the enclosure has a draft of this name by now");
        }
    }

    private Said said(long personId) {
        return new Said(personId, clock.instant());
    }

    /** Those in work first, then by when they were changed, newest first; at most {@link #LISTED}. */
    @Transactional(readOnly = true)
    public List<DraftFacts> of(DraftPlace place) {
        return drafts.openFirst(place.siteId(), place.enclosureId(), Limit.of(LISTED)).stream()
                .map(Draft::facts)
                .toList();
    }

    /** What drafts of a site may hang. */
    @Transactional(readOnly = true)
    public Stock stock(long siteId) {
        return Stock.of(lamps, siteId);
    }

    @Transactional(readOnly = true)
    public DraftFacts get(DraftPlace place, long draftId) {
        return find(place, draftId).facts();
    }

    private Draft find(DraftPlace place, long draftId) {
        return drafts.find(place.siteId(), place.enclosureId(), draftId).orElseThrow(NotFoundException::new);
    }
}
