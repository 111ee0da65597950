package dapple.target;

import dapple.site.ConflictException;
import dapple.species.SpeciesFacts;
import dapple.species.SpeciesKeeping;
import jakarta.persistence.Tuple;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The versions of what species need. */
@Service
public class Targets {
    private final SpeciesKeeping species;
    private final TargetVersionRepository versions;
    private final ApplicationEventPublisher events;
    private final Clock clock;

    Targets(SpeciesKeeping species, TargetVersionRepository versions, ApplicationEventPublisher events, Clock clock) {
        this.species = species;
        this.versions = versions;
        this.events = events;
        this.clock = clock;
    }

    /**
     * Makes the next version of a species' target. It holds from now on; a first one also for earlier readings, if that is
     * asked.
     *
     * @throws IllegalArgumentException if that is asked of a later version: it would rewrite what another has judged
     */
    @Transactional
    public Target approve(long siteId, Approval approval) {
        species.hold(siteId, approval.speciesId());
        return store(siteId, approval, last(approval.speciesId()) + 1);
    }

    /**
     * Makes the version that follows the one which the person has seen. The same approval sent twice makes one version.
     *
     * @param seen number of the version in force when the person began; 0 for none
     * @throws ConflictException if another version has come between
     */
    @Transactional
    public Target approveAfter(long siteId, int seen, Approval approval) {
        species.hold(siteId, approval.speciesId());
        int last = last(approval.speciesId());
        if (last == seen) {
            return store(siteId, approval, last + 1);
        }
        return newest(siteId, approval.speciesId())
                .filter(newest -> last == seen + 1 && newest.is(approval))
                .map(VersionDetails::target)
                .orElseThrow(() -> new ConflictException("another version has been approved since"));
    }

    private int last(long speciesId) {
        return versions.lastNumber(speciesId).orElse(0);
    }

    private Target store(long siteId, Approval approval, int number) {
        if (number > 1 && approval.isForEarlierReadings()) {
            throw new IllegalArgumentException(
                    "a first version alone counts for earlier readings, was version " + number);
        }
        Target target = versions.saveAndFlush(new TargetVersion(siteId, number, approval, clock.instant()))
                .target();
        if (target.isForEarlierReadings()) {
            events.publishEvent(new EarlierReadingsIncluded(siteId, target.speciesId(), target.inForceFrom()));
        }
        return target;
    }

    /** When a target came into force. */
    @Transactional(readOnly = true)
    public List<Instant> turns(long siteId) {
        return versions.turns(siteId);
    }

    /** All species of a site, by id. */
    @Transactional(readOnly = true)
    public Map<Long, SpeciesFacts> speciesById(long siteId) {
        return species.byId(siteId);
    }

    /** The targets in force at an instant, by species; a species without one is missing. */
    @Transactional(readOnly = true)
    public Map<Long, Target> inForce(long siteId, Collection<Long> speciesIds, Instant at) {
        return versions.inForce(siteId, speciesIds, at).stream()
                .map(TargetVersion::target)
                .collect(Collectors.toMap(Target::speciesId, target -> target, (older, newer) -> newer));
    }

    /** The same with the hours of light in the month of an instant; months begin by UTC. */
    @Transactional(readOnly = true)
    public Map<Long, TargetInMonth> inForceInMonth(long siteId, Collection<Long> speciesIds, Instant at) {
        int month = at.atZone(ZoneOffset.UTC).getMonthValue();
        return versions.inForceInMonth(siteId, speciesIds, at, month).stream()
                .map(Targets::inMonth)
                .collect(Collectors.toMap(
                        found -> found.target().speciesId(), Function.identity(), (older, newer) -> newer));
    }

    private static TargetInMonth inMonth(Tuple row) {
        TargetVersion version = row.get("version", TargetVersion.class);
        return new TargetInMonth(
                version.target(),
                Optional.ofNullable(row.get("hours", Double.class)).flatMap(version::light));
    }

    /** The same with who approved them and why. */
    @Transactional(readOnly = true)
    public Map<Long, VersionDetails> versionsInForce(long siteId, Collection<Long> speciesIds, Instant at) {
        return details(versions.inForce(siteId, speciesIds, at)).stream()
                .collect(Collectors.toMap(
                        version -> version.target().speciesId(), version -> version, (older, newer) -> newer));
    }

    /** Versions by their ids. */
    @Transactional(readOnly = true)
    public Map<Long, Target> byId(long siteId, Collection<Long> ids) {
        return versions.findAllAtSite(siteId, ids).stream()
                .map(TargetVersion::target)
                .collect(Collectors.toMap(Target::id, target -> target));
    }

    /** Versions by their ids, and the newest of some species, asked for at once. */
    @Transactional(readOnly = true)
    public TargetsKnown known(long siteId, Collection<Long> ids, Collection<Long> speciesIds) {
        return TargetsKnown.of(versions.withNewest(siteId, ids, speciesIds).stream()
                .map(TargetVersion::target)
                .toList());
    }

    /** The newest versions of all species of a site, by species. */
    @Transactional(readOnly = true)
    public Map<Long, VersionDetails> newest(long siteId) {
        return details(versions.newest(siteId)).stream()
                .collect(Collectors.toMap(version -> version.target().speciesId(), version -> version));
    }

    /** The newest version of one species. */
    @Transactional(readOnly = true)
    public Optional<VersionDetails> newest(long siteId, long speciesId) {
        return versions(siteId, speciesId).stream().findFirst();
    }

    /** All versions of one species, newest first. */
    @Transactional(readOnly = true)
    public List<VersionDetails> versions(long siteId, long speciesId) {
        return details(versions.newestFirst(siteId, speciesId));
    }

    /** What one species needed over time, newest first. */
    @Transactional(readOnly = true)
    public List<Target> courseOf(long siteId, long speciesId) {
        return versions.newestFirst(siteId, speciesId).stream()
                .map(TargetVersion::target)
                .toList();
    }

    private List<VersionDetails> details(List<TargetVersion> found) {
        if (!found.isEmpty()) {
            versions.withDayLengths(found);
        }
        return found.stream().map(TargetVersion::details).toList();
    }
}
