package dapple.prediction;

import dapple.animal.AnimalFacts;
import dapple.animal.Animals;
import dapple.light.quantity.Quantity;
import dapple.rig.RigScene;
import dapple.species.SpeciesFacts;
import dapple.target.Target;
import dapple.target.Targets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What those who live in an enclosure need, by the targets in force. */
@Service
public class LimitsInForce {
    private final Animals animals;
    private final Targets targets;

    LimitsInForce(Animals animals, Targets targets) {
        this.animals = animals;
        this.targets = targets;
    }

    @Transactional(readOnly = true)
    public PointLimits at(long siteId, long enclosureId, Instant at) {
        Set<Long> living = animals.inEnclosure(siteId, enclosureId, at).stream()
                .map(AnimalFacts::speciesId)
                .collect(Collectors.toCollection(TreeSet::new));
        if (living.isEmpty()) {
            return PointLimits.none();
        }
        Map<Long, SpeciesFacts> species = targets.speciesById(siteId);
        Map<Long, Target> inForce = targets.inForce(siteId, living, at);
        List<PointLimits.OfSpecies> limits = new ArrayList<>();
        living.forEach(id -> Optional.ofNullable(species.get(id))
                .ifPresent(named -> Optional.ofNullable(inForce.get(id))
                        .ifPresent(target -> limits.addAll(limits(named.scientificName(), target)))));
        return new PointLimits(limits);
    }

    private static List<PointLimits.OfSpecies> limits(String name, Target target) {
        List<PointLimits.OfSpecies> limits = new ArrayList<>();
        for (Quantity quantity : RigScene.LIGHT) {
            target.limits(quantity).ifPresent(found -> limits.add(new PointLimits.OfSpecies(name, quantity, found)));
        }
        return limits;
    }
}
