package dapple.draft;

import dapple.rig.Rig;
import dapple.rig.RigChanging;
import dapple.rig.RigEntry;
import dapple.rig.Rigs;
import dapple.site.ConflictException;
import java.time.Clock;
import java.util.Optional;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Records that a draft hangs: all that it changes as one change of the rig. */
@Service
public class Installing {
    private final RigChanging changing;
    private final Rigs rigs;
    private final Drafts drafts;
    private final Clock clock;

    Installing(RigChanging changing, Rigs rigs, Drafts drafts, Clock clock) {
        this.changing = changing;
        this.rigs = rigs;
        this.drafts = drafts;
        this.clock = clock;
    }

    /**
     * Makes a draft the installed rig, or finds that the same entry has done so before.
     *
     * @return the id of the change
     * @throws dapple.rig.StaleRigException if the rig has been changed since the form was made
     * @throws dapple.rig.RigRefusedException if a part contradicts what is on record
     * @throws org.springframework.orm.ObjectOptimisticLockingFailureException if the draft has been changed since
     * @throws ConflictException if it is closed, changes nothing, or hangs a lamp that is still to be bought
     */
    @Transactional
    public long install(DraftSeen seen, RigEntry entry) {
        Optional<Long> before = changing.madeBefore(entry);
        return before.orElseGet(() -> installed(seen, entry));
    }

    private long installed(DraftSeen seen, RigEntry entry) {
        DraftPlace place = new DraftPlace(entry.siteId(), entry.enclosureId());
        RigDifference difference = difference(place, drafts.get(place, seen.draftId()));
        if (difference.isEmpty() || !difference.missing().isEmpty()) {
            throw new ConflictException("there is nothing to hang, or not yet");
        }
        long change = changing.makeAll(entry, difference.steps());
        drafts.install(place, seen, change, entry.personId());
        return change;
    }

    /** What must be done so that a draft hangs. */
    @Transactional(readOnly = true)
    public RigDifference difference(DraftPlace place, DraftFacts draft) {
        Rig now = rigs.at(place.siteId(), place.enclosureId(), clock.instant());
        return RigDifference.between(now, draft.rig(), drafts.stock(place.siteId()));
    }
}
