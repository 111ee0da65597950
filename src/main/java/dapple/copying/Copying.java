package dapple.copying;

import dapple.enclosure.EnclosureChange;
import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.Enclosures;
import dapple.enclosure.NewPoint;
import dapple.enclosure.PointFacts;
import dapple.enclosure.Served;
import dapple.rig.Rigs;
import dapple.site.ConflictException;
import dapple.site.TakenException;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Builds enclosures like one that is there: all that a form asks for, or nothing. */
@Service
class Copying {
    private final CopyRepository copies;
    private final Enclosures enclosures;
    private final Rigs rigs;
    private final RigCopying rigCopying;
    private final Clock clock;

    Copying(CopyRepository copies, Enclosures enclosures, Rigs rigs, RigCopying rigCopying, Clock clock) {
        this.copies = copies;
        this.enclosures = enclosures;
        this.rigs = rigs;
        this.rigCopying = rigCopying;
        this.clock = clock;
    }

    @Transactional(readOnly = true)
    public Original original(long siteId, long enclosureId) {
        EnclosureFacts enclosure = enclosures.get(siteId, enclosureId);
        return new Original(
                enclosure,
                enclosures.pointsOf(siteId, enclosureId),
                rigs.in(siteId, enclosure, clock.instant()),
                rigs.lastRecorded(siteId, enclosureId));
    }

    static String small(String code) {
        return code.toLowerCase(Locale.ROOT);
    }

    /**
     * Makes all copies, or finds that the same form has made them before.
     *
     * @throws StaleOriginalException if the original is not as the form showed it
     * @throws CodeTakenException if the site has an enclosure with one of the codes, in use or not
     * @throws TakenException if somebody else has taken a code or a tag of a lamp in the same moment
     * @throws ConflictException if the key belongs to copies of another enclosure
     */
    @Transactional
    public void make(CopyEntry entry, CopyPlan plan) {
        enclosures.lock(entry.siteId(), entry.originalId());
        if (isMade(entry)) {
            return;
        }
        Original original = original(entry.siteId(), entry.originalId());
        if (!original.mark().equals(entry.seen())) {
            throw new StaleOriginalException();
        }
        requireFree(entry.siteId(), plan.codes());
        try {
            build(entry, plan, original);
        } catch (DataIntegrityViolationException taken) {
            throw new TakenException("the site has an enclosure or a lamp of this name by now");
        }
    }

    private boolean isMade(CopyEntry entry) {
        List<EnclosureCopy> made = copies.madeBy(entry.siteId(), entry.key());
        if (made.stream().anyMatch(copy -> copy.originalId() != entry.originalId())) {
            throw new ConflictException("the key belongs to copies of another enclosure");
        }
        return !made.isEmpty();
    }

    private void requireFree(long siteId, List<String> codes) {
        Set<String> taken = enclosures.all(siteId).stream()
                .map(enclosure -> small(enclosure.code()))
                .collect(Collectors.toSet());
        codes.stream().filter(code -> taken.contains(small(code))).findFirst().ifPresent(code -> {
            throw new CodeTakenException(code);
        });
    }

    private void build(CopyEntry entry, CopyPlan plan, Original original) {
        Instant now = clock.instant();
        int inWalk = nextInWalk(entry.siteId(), plan.roomId());
        RigPlan rig = rigCopying.plan(entry, plan, original);
        for (String code : plan.codes()) {
            long copy = enclosures.add(entry.siteId(), change(original.enclosure(), plan.roomId(), code, inWalk++));
            original.points().forEach(point -> copy(entry.siteId(), copy, point));
            rigCopying.hang(rig, copy, code);
            copies.saveAndFlush(new EnclosureCopy(entry, plan.lamps(), copy, now));
        }
    }

    private int nextInWalk(long siteId, long roomId) {
        enclosures.room(siteId, roomId);
        return enclosures.lastInRoom(siteId, roomId) + 1;
    }

    private static EnclosureChange change(EnclosureFacts like, long roomId, String code, int inWalk) {
        return new EnclosureChange(roomId, code, inWalk, like.size(), like.front(), like.reach());
    }

    /** The animals of the original are not those of a copy; species may come to live there. */
    private void copy(long siteId, long enclosureId, PointFacts point) {
        NewPoint like = new NewPoint(
                point.code(), point.place(), point.role(), point.facing(), point.position(), point.quantities());
        PointFacts made = enclosures.addPoint(siteId, enclosureId, like);
        if (!point.served().speciesIds().isEmpty()) {
            enclosures.serve(siteId, made.id(), Served.species(point.served().speciesIds()));
        }
    }

    /** What a form has made of an original, in its order; empty if it has made nothing. */
    @Transactional(readOnly = true)
    public List<EnclosureCopy> made(long siteId, long originalId, UUID key) {
        enclosures.get(siteId, originalId);
        return copies.madeBy(siteId, key).stream()
                .filter(copy -> copy.originalId() == originalId)
                .toList();
    }
}
