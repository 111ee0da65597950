package dapple.prediction;

import dapple.animal.AnimalFacts;
import dapple.animal.Animals;
import dapple.animal.Occupant;
import dapple.rig.RigScene;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What those who live in an enclosure need, as limits. */
@Service
public class LimitsInForce {
    private final Animals animals;
    private final ResidentNeeds needs;

    LimitsInForce(Animals animals, ResidentNeeds needs) {
        this.animals = animals;
        this.needs = needs;
    }

    @Transactional(readOnly = true)
    public PointLimits at(long siteId, long enclosureId, Instant at) {
        List<Occupant> occupants = animals.occupants(siteId, enclosureId, at);
        List<SpeciesNeed> all = needs.of(siteId, occupants, at);
        return new PointLimits(all.stream()
                .flatMap(need -> limits(need, need.holders(occupants, all)))
                .toList());
    }

    private static Stream<PointLimits.OfSpecies> limits(SpeciesNeed need, List<AnimalFacts> holders) {
        return RigScene.LIGHT.stream()
                .flatMap(quantity -> need
                        .limits(quantity)
                        .map(found -> new PointLimits.OfSpecies(need.holder(), quantity, found, holders))
                        .stream());
    }
}
