package dapple.reading;

import dapple.animal.AnimalFacts;
import dapple.animal.Animals;
import dapple.enclosure.PointFacts;
import dapple.light.judging.Limits;
import dapple.light.judging.PointRole;
import dapple.light.quantity.Quantity;
import dapple.target.Target;
import dapple.target.Targets;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;

/** Who needs what at a point when a reading was taken: the one place in which that is decided. */
@Component
class Needs {
    private final Animals animals;
    private final Targets targets;

    Needs(Animals animals, Targets targets) {
        this.animals = animals;
        this.targets = targets;
    }

    /** One need for each species that lived there and that the point serves, by the species' id; none at a keeper's point. */
    List<Need> of(Reading reading, PointFacts point) {
        Set<Long> species = point.role() == PointRole.KEEPER ? Set.of() : served(reading, point);
        if (species.isEmpty()) {
            return List.of();
        }
        Map<Long, Target> inForce = targets.inForce(reading.siteId(), species, reading.takenAt());
        return species.stream()
                .map(id -> need(id, Optional.ofNullable(inForce.get(id))))
                .toList();
    }

    private Set<Long> served(Reading reading, PointFacts point) {
        return animals.inEnclosure(reading.siteId(), reading.visit().enclosureId(), reading.takenAt()).stream()
                .map(AnimalFacts::speciesId)
                .filter(point::serves)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static Need need(long speciesId, Optional<Target> target) {
        Map<Quantity, Limits> limits = new EnumMap<>(Quantity.class);
        for (Quantity quantity : Quantity.values()) {
            target.flatMap(found -> found.limits(quantity)).ifPresent(found -> limits.put(quantity, found));
        }
        return new Need(speciesId, target.map(Target::id), Optional.empty(), limits);
    }
}
