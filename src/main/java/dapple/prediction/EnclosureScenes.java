package dapple.prediction;

import dapple.animal.Animals;
import dapple.animal.Occupant;
import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.Enclosures;
import dapple.rig.RigScene;
import dapple.rig.Rigs;
import dapple.target.Target;
import dapple.target.Targets;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Gathers what the light in an enclosure is computed from. */
@Service
public class EnclosureScenes {
    private static final Comparator<SpeciesNeed> STRICTEST_FIRST =
            Comparator.comparingDouble(SpeciesNeed::ceiling).thenComparing(SpeciesNeed::speciesId);

    private final Enclosures enclosures;
    private final Rigs rigs;
    private final Animals animals;
    private final Targets targets;

    EnclosureScenes(Enclosures enclosures, Rigs rigs, Animals animals, Targets targets) {
        this.enclosures = enclosures;
        this.rigs = rigs;
        this.animals = animals;
        this.targets = targets;
    }

    /**
     * An enclosure at an instant.
     *
     * @param speciesId whose target is wanted; else, and where it does not live there, that of the strictest ceiling
     */
    @Transactional(readOnly = true)
    public EnclosureScene at(long siteId, long enclosureId, Instant at, Optional<Long> speciesId) {
        EnclosureFacts enclosure = enclosures.get(siteId, enclosureId);
        List<Occupant> occupants = animals.occupants(siteId, enclosureId, at);
        List<SpeciesNeed> needs = needs(siteId, occupants, at);
        return new EnclosureScene(
                enclosure,
                RigScene.of(rigs.in(siteId, enclosure, at)),
                enclosures.pointsOf(siteId, enclosureId),
                occupants,
                needs,
                needs.stream()
                        .filter(need ->
                                speciesId.filter(id -> id == need.speciesId()).isPresent())
                        .findFirst()
                        .or(() -> needs.stream().findFirst()));
    }

    private List<SpeciesNeed> needs(long siteId, List<Occupant> occupants, Instant at) {
        Map<Long, String> living = occupants.stream()
                .collect(Collectors.toMap(
                        occupant -> occupant.animal().speciesId(),
                        Occupant::scientificName,
                        (one, other) -> one,
                        TreeMap::new));
        Map<Long, Target> inForce = living.isEmpty() ? Map.of() : targets.inForce(siteId, living.keySet(), at);
        return living.entrySet().stream()
                .map(named -> new SpeciesNeed(
                        named.getKey(), named.getValue(), Optional.ofNullable(inForce.get(named.getKey()))))
                .sorted(STRICTEST_FIRST)
                .toList();
    }
}
