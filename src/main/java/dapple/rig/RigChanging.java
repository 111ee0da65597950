package dapple.rig;

import dapple.enclosure.Enclosures;
import dapple.rig.RigRefusedException.Reason;
import dapple.site.ConflictException;
import java.time.Clock;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * Records changes of rigs. Each ends parts and begins others, never edits one; those of one enclosure come one at a time.
 */
@Service
public class RigChanging {
    private final RigChangeRepository changes;
    private final FittingChanges fittings;
    private final CoverChanges covers;
    private final FurnitureChanges furniture;
    private final Enclosures enclosures;
    private final ApplicationEventPublisher events;
    private final Clock clock;

    RigChanging(
            RigChangeRepository changes,
            FittingChanges fittings,
            CoverChanges covers,
            FurnitureChanges furniture,
            Enclosures enclosures,
            ApplicationEventPublisher events,
            Clock clock) {
        this.changes = changes;
        this.fittings = fittings;
        this.covers = covers;
        this.furniture = furniture;
        this.enclosures = enclosures;
        this.events = events;
        this.clock = clock;
    }

    /**
     * Does one thing to a rig, or finds that the same entry has done it before.
     *
     * @return the id of the change
     * @throws StaleRigException if the rig has been changed since the form was made
     * @throws RigRefusedException if the step contradicts what is on record
     */
    @Transactional
    public long make(RigEntry entry, RigStep step) {
        return once(entry, step.kind(), change -> make(change, step));
    }

    /**
     * Does several things to a rig at one instant, as one change; each part is touched once, and what goes goes before
     * what comes.
     *
     * @return the id of the change
     * @throws StaleRigException if the rig has been changed since the form was made
     * @throws RigRefusedException if a step contradicts what is on record
     */
    @Transactional
    public long makeAll(RigEntry entry, List<RigStep> steps) {
        return once(entry, kind(steps), change -> {
            fittings.lockAll(change, steps);
            steps.forEach(step -> make(change, step));
        });
    }

    private static RigChangeKind kind(List<RigStep> steps) {
        List<RigChangeKind> kinds = steps.stream().map(RigStep::kind).distinct().toList();
        return kinds.size() == 1 ? kinds.get(0) : RigChangeKind.REBUILT;
    }

    private void make(RigChange change, RigStep step) {
        if (step instanceof LampStep lamp) {
            fittings.make(change, lamp);
        } else if (step instanceof CoverStep cover) {
            covers.make(change, cover);
        } else if (step instanceof FurnitureStep item) {
            furniture.make(change, item);
        }
    }

    /**
     * Records what is found in an enclosure when recording begins, as one change.
     *
     * @return the id of the change
     * @throws RigRefusedException if the enclosure has a rig on record, or a part contradicts what is
     */
    @Transactional
    public long setUpFirst(RigEntry entry, FirstRig found) {
        return once(entry, RigChangeKind.FIRST_SET_UP, change -> {
            if (changes.count(entry.siteId(), entry.enclosureId()) > 1) {
                throw new RigRefusedException(Reason.NOT_FIRST);
            }
            found.lamps().stream()
                    .sorted(Comparator.comparingLong(LampStep.Fit::lampId))
                    .forEach(lamp -> fittings.fit(change, lamp.lampId(), lamp.hanging()));
            found.covers().forEach(cover -> covers.begin(change, cover));
            found.furniture().forEach(item -> furniture.begin(change, item));
        });
    }

    private long once(RigEntry entry, RigChangeKind kind, Consumer<RigChange> parts) {
        enclosures.lock(entry.siteId(), entry.enclosureId());
        Optional<RigChange> before = changes.findByKey(entry.siteId(), entry.key());
        if (before.isPresent()) {
            return sameEntry(before.get(), entry);
        }
        requireFresh(entry);
        if (entry.at().isAfter(clock.instant())) {
            throw new RigRefusedException(Reason.IN_FUTURE);
        }
        RigChange change = changes.saveAndFlush(new RigChange(entry, kind, clock.instant()));
        parts.accept(change);
        events.publishEvent(new RigChanged(entry.siteId(), entry.enclosureId(), entry.at()));
        return change.id();
    }

    private static long sameEntry(RigChange before, RigEntry entry) {
        if (before.enclosureId() != entry.enclosureId()) {
            throw new ConflictException("the key belongs to an entry at another enclosure");
        }
        return before.id();
    }

    private void requireFresh(RigEntry entry) {
        long last = changes.lastRecorded(entry.siteId(), entry.enclosureId()).orElse(0L);
        if (entry.seen().filter(seen -> seen != last).isPresent()) {
            throw new StaleRigException();
        }
    }
}
