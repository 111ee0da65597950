package dapple.prediction;

import dapple.animal.Occupant;
import dapple.order.OrderFacts;
import dapple.order.VetOrders;
import dapple.prediction.SpeciesNeed.UnderOrder;
import dapple.target.TargetInMonth;
import dapple.target.Targets;
import java.time.Instant;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What those who live in an enclosure need, by vets' orders and targets in force. */
@Service
class ResidentNeeds {
    private static final Comparator<SpeciesNeed> STRICTEST_FIRST = Comparator.comparingDouble(SpeciesNeed::ceiling)
            .thenComparing(SpeciesNeed::speciesId)
            .thenComparing(SpeciesNeed::animalId);

    private final Targets targets;
    private final VetOrders orders;

    ResidentNeeds(Targets targets, VetOrders orders) {
        this.targets = targets;
        this.orders = orders;
    }

    /** One for each species, and one for each animal or group under an order; the strictest ceiling first. */
    @Transactional(readOnly = true)
    public List<SpeciesNeed> of(long siteId, List<Occupant> occupants, Instant at) {
        if (occupants.isEmpty()) {
            return List.of();
        }
        Set<Long> living = occupants.stream()
                .map(occupant -> occupant.animal().speciesId())
                .collect(Collectors.toSet());
        Collection<Long> ids = occupants.stream().map(Occupant::id).toList();
        Map<Long, TargetInMonth> inForce = targets.inForceInMonth(siteId, living, at);
        Map<Long, OrderFacts> ordered = orders.inForceOf(siteId, ids, at);
        return occupants.stream()
                .map(occupant -> need(
                        occupant,
                        Optional.ofNullable(inForce.get(occupant.animal().speciesId())),
                        Optional.ofNullable(ordered.get(occupant.id()))))
                .distinct()
                .sorted(STRICTEST_FIRST)
                .toList();
    }

    private static SpeciesNeed need(Occupant occupant, Optional<TargetInMonth> target, Optional<OrderFacts> order) {
        return new SpeciesNeed(
                occupant.animal().speciesId(),
                occupant.scientificName(),
                target.map(TargetInMonth::target),
                order.map(found -> new UnderOrder(occupant.animal(), found)),
                target.flatMap(TargetInMonth::light));
    }
}
