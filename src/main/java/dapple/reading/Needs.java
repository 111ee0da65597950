package dapple.reading;

import dapple.animal.AnimalFacts;
import dapple.animal.Animals;
import dapple.enclosure.PointFacts;
import dapple.light.judging.Limits;
import dapple.light.judging.PointRole;
import dapple.light.quantity.Quantity;
import dapple.order.OrderFacts;
import dapple.order.VetOrders;
import dapple.target.Target;
import dapple.target.Targets;
import java.time.Instant;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;

/** Who needs what at a point when a reading was taken: the one place in which that is decided. */
@Component
class Needs {
    private final Animals animals;
    private final Targets targets;
    private final VetOrders orders;

    Needs(Animals animals, Targets targets, VetOrders orders) {
        this.animals = animals;
        this.targets = targets;
        this.orders = orders;
    }

    /**
     * One need for each species that lived there and of which the point serves somebody, by the species' id, and one for each animal
     * under a vet's order in place of its species'; none at a keeper's point.
     */
    List<Need> of(long siteId, long enclosureId, PointFacts point, Instant at) {
        if (point.role() == PointRole.KEEPER) {
            return List.of();
        }
        Map<Long, List<AnimalFacts>> bySpecies = served(siteId, enclosureId, point, at);
        if (bySpecies.isEmpty()) {
            return List.of();
        }
        Map<Long, Target> inForce = targets.inForce(siteId, bySpecies.keySet(), at);
        Map<Long, OrderFacts> ordered = orders.inForceOf(siteId, ids(bySpecies), at);
        return bySpecies.entrySet().stream()
                .flatMap(kind -> byOrder(kind.getValue(), ordered).entrySet().stream()
                        .map(same -> need(
                                kind.getKey(),
                                same.getValue(),
                                Optional.ofNullable(inForce.get(kind.getKey())),
                                same.getKey())))
                .toList();
    }

    private Map<Long, List<AnimalFacts>> served(long siteId, long enclosureId, PointFacts point, Instant at) {
        return animals.inEnclosure(siteId, enclosureId, at).stream()
                .filter(animal -> point.serves(animal.speciesId(), animal.id()))
                .collect(Collectors.groupingBy(AnimalFacts::speciesId, TreeMap::new, Collectors.toList()));
    }

    private static List<Long> ids(Map<Long, List<AnimalFacts>> bySpecies) {
        return bySpecies.values().stream()
                .flatMap(List::stream)
                .map(AnimalFacts::id)
                .toList();
    }

    /** Animals of one species by the orders for them; those who are under none by an empty one. */
    private static Map<Optional<OrderFacts>, Set<Long>> byOrder(List<AnimalFacts> kind, Map<Long, OrderFacts> ordered) {
        return kind.stream()
                .collect(Collectors.groupingBy(
                        animal -> Optional.ofNullable(ordered.get(animal.id())),
                        LinkedHashMap::new,
                        Collectors.mapping(AnimalFacts::id, Collectors.toSet())));
    }

    private static Need need(long speciesId, Set<Long> animals, Optional<Target> target, Optional<OrderFacts> order) {
        Map<Quantity, Limits> limits = new EnumMap<>(Quantity.class);
        for (Quantity quantity : Quantity.values()) {
            target.flatMap(found -> found.limits(quantity)).ifPresent(found -> limits.put(quantity, found));
        }
        order.ifPresent(found ->
                limits.put(Quantity.UV_INDEX, found.limits(Optional.ofNullable(limits.get(Quantity.UV_INDEX)))));
        return new Need(speciesId, animals, target.map(Target::id), order.map(OrderFacts::id), limits);
    }
}
