package dapple.prediction;

import dapple.animal.AnimalFacts;
import dapple.animal.Animals;
import dapple.animal.Housed;
import dapple.animal.Occupant;
import dapple.prediction.ResidentNeeds.InForce;
import dapple.prediction.ResidentNeeds.Resident;
import dapple.rig.RigScene;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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
        return limits(all, occupants.stream().map(Occupant::animal).toList());
    }

    /**
     * The same of many enclosures.
     *
     * @param residents by enclosure, as {@link Animals#byEnclosure}
     */
    @Transactional(readOnly = true)
    public Map<Long, PointLimits> of(long siteId, Map<Long, List<Housed>> residents, Instant at) {
        Map<Long, List<Resident>> byEnclosure = new HashMap<>();
        residents.forEach((enclosure, housed) -> byEnclosure.put(
                enclosure,
                housed.stream()
                        .map(one -> new Resident(one.animal(), one.species().scientificName()))
                        .toList()));
        InForce inForce = needs.inForce(
                siteId, byEnclosure.values().stream().flatMap(List::stream).toList(), at);
        Map<Long, PointLimits> limits = new HashMap<>();
        byEnclosure.forEach((enclosure, together) -> limits.put(
                enclosure,
                limits(
                        inForce.of(together),
                        together.stream().map(Resident::animal).toList())));
        return limits;
    }

    private static PointLimits limits(List<SpeciesNeed> all, List<AnimalFacts> animals) {
        return new PointLimits(all.stream()
                .flatMap(need -> limits(need, need.holders(animals, all)))
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
