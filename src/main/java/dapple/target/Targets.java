package dapple.target;

import dapple.site.NotFoundException;
import java.time.Clock;
import java.time.Instant;
import java.util.Collection;
import java.util.Map;
import java.util.stream.Collectors;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Species and the versions of their targets. */
@Service
public class Targets {
    private final SpeciesRepository species;
    private final TargetVersionRepository versions;
    private final Clock clock;

    Targets(SpeciesRepository species, TargetVersionRepository versions, Clock clock) {
        this.species = species;
        this.versions = versions;
        this.clock = clock;
    }

    @Transactional
    public SpeciesFacts addSpecies(long siteId, String scientificName, String commonName) {
        return species.save(new Species(siteId, scientificName, commonName)).facts();
    }

    /** Makes the next version of a species' target. It holds from now on: approval is never backdated. */
    @Transactional
    public Target approve(long siteId, Approval approval) {
        Species kind = species.findAtSite(siteId, approval.speciesId()).orElseThrow(NotFoundException::new);
        int number = versions.countOf(kind.facts().id()) + 1;
        return versions.save(new TargetVersion(siteId, number, approval, clock.instant()))
                .target();
    }

    /** All species of a site, by id. */
    @Transactional(readOnly = true)
    public Map<Long, SpeciesFacts> speciesById(long siteId) {
        return species.all(siteId).stream()
                .map(Species::facts)
                .collect(Collectors.toMap(SpeciesFacts::id, facts -> facts));
    }

    /** The targets in force at an instant, by species; a species without one is missing. */
    @Transactional(readOnly = true)
    public Map<Long, Target> inForce(long siteId, Collection<Long> speciesIds, Instant at) {
        return versions.inForce(siteId, speciesIds, at).stream()
                .map(TargetVersion::target)
                .collect(Collectors.toMap(Target::speciesId, target -> target, (older, newer) -> newer));
    }

    /** Versions by their ids. */
    @Transactional(readOnly = true)
    public Map<Long, Target> byId(long siteId, Collection<Long> ids) {
        return versions.findAllAtSite(siteId, ids).stream()
                .map(TargetVersion::target)
                .collect(Collectors.toMap(Target::id, target -> target));
    }
}
