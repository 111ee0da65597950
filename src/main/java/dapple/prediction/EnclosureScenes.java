package dapple.prediction;

import dapple.animal.Animals;
import dapple.animal.Occupant;
import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.Enclosures;
import dapple.lamp.LampFacts;
import dapple.rig.Rig;
import dapple.rig.RigScene;
import dapple.rig.Rigs;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Gathers what the light in an enclosure is computed from. */
@Service
public class EnclosureScenes {
    private final Enclosures enclosures;
    private final Rigs rigs;
    private final Animals animals;
    private final ResidentNeeds residentNeeds;

    EnclosureScenes(Enclosures enclosures, Rigs rigs, Animals animals, ResidentNeeds residentNeeds) {
        this.enclosures = enclosures;
        this.rigs = rigs;
        this.animals = animals;
        this.residentNeeds = residentNeeds;
    }

    /**
     * An enclosure at an instant.
     *
     * @param speciesId whose target is wanted; else, and where it does not live there, that of the strictest ceiling
     * @param animalId whose vet's order is wanted instead
     */
    @Transactional(readOnly = true)
    public EnclosureScene at(
            long siteId, long enclosureId, Instant at, Optional<Long> speciesId, Optional<Long> animalId) {
        EnclosureFacts enclosure = enclosures.get(siteId, enclosureId);
        return scene(siteId, at, enclosure, rigs.in(siteId, enclosure, at), need -> need.isOf(speciesId, animalId));
    }

    /** The same with the target of the strictest ceiling, where all lamps of the site are at hand. */
    @Transactional(readOnly = true)
    public EnclosureScene at(long siteId, long enclosureId, Instant at, Map<Long, LampFacts> lamps) {
        EnclosureFacts enclosure = enclosures.get(siteId, enclosureId);
        return scene(siteId, at, enclosure, rigs.in(siteId, enclosure, at, lamps), need -> true);
    }

    private EnclosureScene scene(
            long siteId, Instant at, EnclosureFacts enclosure, Rig rig, Predicate<SpeciesNeed> isWanted) {
        List<Occupant> occupants = animals.occupants(siteId, enclosure.id(), at);
        List<SpeciesNeed> needs = residentNeeds.of(siteId, occupants, at);
        return new EnclosureScene(
                enclosure,
                RigScene.of(rig),
                enclosures.pointsOf(siteId, enclosure.id()),
                occupants,
                needs,
                needs.stream()
                        .filter(isWanted)
                        .findFirst()
                        .or(() -> needs.stream().findFirst()));
    }

    /** The same without those who live there, for what does not ask what they need. */
    @Transactional(readOnly = true)
    public EnclosureScene withoutResidents(long siteId, long enclosureId, Instant at) {
        EnclosureFacts enclosure = enclosures.get(siteId, enclosureId);
        return new EnclosureScene(
                enclosure,
                RigScene.of(rigs.in(siteId, enclosure, at)),
                enclosures.pointsOf(siteId, enclosureId),
                List.of(),
                List.of(),
                Optional.empty());
    }
}
