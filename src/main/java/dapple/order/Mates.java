package dapple.order;

import dapple.animal.AnimalFacts;
import dapple.animal.Animals;
import dapple.animal.StayFacts;
import dapple.light.judging.Limits;
import dapple.light.quantity.Quantity;
import dapple.target.Target;
import dapple.target.Targets;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What animals need, and who shares an enclosure. */
@Service
public class Mates {
    private final Animals animals;
    private final Targets targets;
    private final VetOrders orders;

    Mates(Animals animals, Targets targets, VetOrders orders) {
        this.animals = animals;
        this.targets = targets;
        this.orders = orders;
    }

    /** What each of some animals needs at an instant: by a vet's order, else by the target of its species. */
    @Transactional(readOnly = true)
    public List<Needs> needs(long siteId, Collection<AnimalFacts> some, Instant at) {
        if (some.isEmpty()) {
            return List.of();
        }
        Set<Long> species = some.stream().map(AnimalFacts::speciesId).collect(Collectors.toSet());
        Map<Long, Target> inForce = targets.inForce(siteId, species, at);
        Map<Long, OrderFacts> ordered =
                orders.inForceOf(siteId, some.stream().map(AnimalFacts::id).toList(), at);
        return some.stream()
                .map(animal -> needs(
                        animal,
                        Optional.ofNullable(inForce.get(animal.speciesId())),
                        Optional.ofNullable(ordered.get(animal.id()))))
                .toList();
    }

    private static Needs needs(AnimalFacts animal, Optional<Target> target, Optional<OrderFacts> order) {
        Optional<Limits> ofSpecies = target.flatMap(found -> found.limits(Quantity.UV_INDEX));
        return order.map(found -> new Needs(animal, Optional.of(found.limits(ofSpecies)), true))
                .orElseGet(() -> new Needs(animal, ofSpecies, false));
    }

    /** What those need who share an enclosure with an animal at an instant. */
    @Transactional(readOnly = true)
    public List<Needs> of(long siteId, long animalId, Instant at) {
        Optional<StayFacts> stay = Optional.ofNullable(
                animals.presentStays(siteId, List.of(animalId)).get(animalId));
        List<AnimalFacts> others =
                stay.map(present -> animals.inEnclosure(siteId, present.enclosureId(), at)).orElse(List.of()).stream()
                        .filter(mate -> mate.id() != animalId)
                        .toList();
        return needs(siteId, others, at);
    }

    /** Those of its mates with whom the open orders of an animal conflict. */
    @Transactional(readOnly = true)
    public List<NeedsConflict> conflicts(long siteId, AnimalFacts animal, List<OrderFacts> open, Instant at) {
        return open.isEmpty()
                ? List.of()
                : open.stream()
                        .flatMap(order -> conflicts(siteId, animal, order.ordered(), at).stream())
                        .distinct()
                        .toList();
    }

    /** Those of its mates with whom an animal would conflict under what is ordered. */
    @Transactional(readOnly = true)
    public List<NeedsConflict> conflicts(long siteId, AnimalFacts animal, Ordered ordered, Instant at) {
        Optional<Limits> ofSpecies = Optional.ofNullable(
                        targets.inForce(siteId, List.of(animal.speciesId()), at).get(animal.speciesId()))
                .flatMap(target -> target.limits(Quantity.UV_INDEX));
        Needs needs = new Needs(animal, Optional.of(ordered.limits(ofSpecies)), true);
        return NeedsConflict.between(List.of(needs), of(siteId, animal.id(), at));
    }
}
