package dapple.prediction;

import dapple.animal.AnimalFacts;
import dapple.animal.Occupant;
import dapple.order.OrderFacts;
import dapple.order.VetOrders;
import dapple.prediction.SpeciesNeed.UnderOrder;
import dapple.target.TargetInMonth;
import dapple.target.Targets;
import java.time.Instant;
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

    /** An animal or group by its name and that of its species. */
    record Resident(AnimalFacts animal, String scientificName) {}

    /** One for each species, and one for each animal or group under an order; the strictest ceiling first. */
    @Transactional(readOnly = true)
    public List<SpeciesNeed> of(long siteId, List<Occupant> occupants, Instant at) {
        List<Resident> residents = occupants.stream()
                .map(occupant -> new Resident(occupant.animal(), occupant.scientificName()))
                .toList();
        return inForce(siteId, residents, at).of(residents);
    }

    /** What is in force for any of some animals, wherever they live. */
    InForce inForce(long siteId, List<Resident> residents, Instant at) {
        if (residents.isEmpty()) {
            return new InForce(Map.of(), Map.of());
        }
        Set<Long> living = residents.stream()
                .map(resident -> resident.animal().speciesId())
                .collect(Collectors.toSet());
        List<Long> ids =
                residents.stream().map(resident -> resident.animal().id()).toList();
        return new InForce(targets.inForceInMonth(siteId, living, at), orders.inForceOf(siteId, ids, at));
    }

    /** Targets by species, orders by animal. */
    record InForce(Map<Long, TargetInMonth> targets, Map<Long, OrderFacts> orders) {
        List<SpeciesNeed> of(List<Resident> together) {
            return together.stream()
                    .map(this::need)
                    .distinct()
                    .sorted(STRICTEST_FIRST)
                    .toList();
        }

        private SpeciesNeed need(Resident resident) {
            Optional<TargetInMonth> target =
                    Optional.ofNullable(targets.get(resident.animal().speciesId()));
            return new SpeciesNeed(
                    resident.animal().speciesId(),
                    resident.scientificName(),
                    target.map(TargetInMonth::target),
                    Optional.ofNullable(orders.get(resident.animal().id()))
                            .map(found -> new UnderOrder(resident.animal(), found)),
                    target.flatMap(TargetInMonth::light));
        }
    }
}
