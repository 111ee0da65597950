package dapple.order;

import dapple.animal.AnimalFacts;
import dapple.animal.AnimalHistory;
import dapple.animal.Animals;
import java.time.Instant;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Which orders of vets are in force. */
@Service
public class VetOrders {
    private final VetOrderRepository orders;
    private final Animals animals;

    VetOrders(VetOrderRepository orders, Animals animals) {
        this.orders = orders;
        this.animals = animals;
    }

    /** The orders in force for those who live in an enclosure at an instant, by animal. */
    @Transactional(readOnly = true)
    public Map<Long, OrderFacts> inForce(long siteId, long enclosureId, Instant at) {
        List<Long> residents = animals.inEnclosure(siteId, enclosureId, at).stream()
                .map(AnimalFacts::id)
                .toList();
        return inForceOf(siteId, residents, at);
    }

    /** The orders in force for some animals at an instant, by animal; who has none is missing. */
    @Transactional(readOnly = true)
    public Map<Long, OrderFacts> inForceOf(long siteId, Collection<Long> animalIds, Instant at) {
        return orders.inForce(siteId, animalIds, at).stream()
                .map(VetOrder::facts)
                .collect(Collectors.toMap(OrderFacts::animalId, order -> order, (older, newer) -> newer));
    }

    /** Who lives at a site at an instant, with the orders in force for them. */
    @Transactional(readOnly = true)
    public List<Resident> residents(long siteId, Instant at) {
        return Resident.each(orders.residents(siteId, at));
    }

    /** The same of one enclosure. */
    @Transactional(readOnly = true)
    public List<Resident> residents(long siteId, long enclosureId, Instant at) {
        return Resident.each(orders.residents(siteId, enclosureId, at));
    }

    /** When an order came into force or went out of it. */
    @Transactional(readOnly = true)
    public List<Instant> turns(long siteId) {
        return orders.turns(siteId);
    }

    /** Orders by their ids. */
    @Transactional(readOnly = true)
    public Map<Long, OrderFacts> byId(long siteId, Collection<Long> ids) {
        return ids.isEmpty()
                ? Map.of()
                : orders.findAllAtSite(siteId, ids).stream()
                        .map(VetOrder::facts)
                        .collect(Collectors.toMap(OrderFacts::id, order -> order));
    }

    /** Every order for an animal, newest first; before it left a group, the group's count for it. */
    @Transactional(readOnly = true)
    public List<OrderFacts> ofAnimal(long siteId, long animalId) {
        return orders.ofAnimal(siteId, animalId).stream().map(VetOrder::facts).toList();
    }

    /** The orders that ever counted for an animal, newest first; those of a group that it left end when it left. */
    @Transactional(readOnly = true)
    public List<OrderFacts> ofHistory(long siteId, AnimalHistory history) {
        Map<Long, Instant> left = history.stays().stream()
                .filter(stay -> stay.animal().id() != history.animal().id())
                .collect(Collectors.toMap(
                        stay -> stay.animal().id(),
                        stay -> stay.to().orElse(Instant.MAX),
                        (one, other) -> one.isAfter(other) ? one : other));
        Set<Long> records = new HashSet<>(left.keySet());
        records.add(history.animal().id());
        return orders.ofAnimals(siteId, records).stream()
                .map(VetOrder::facts)
                .flatMap(order -> order.before(left.getOrDefault(order.animalId(), Instant.MAX)).stream())
                .toList();
    }

    /** The orders for an animal that are in force at an instant or begin later, oldest first. */
    @Transactional(readOnly = true)
    public List<OrderFacts> openOf(long siteId, long animalId, Instant at) {
        return orders.openAt(siteId, animalId, at).stream().map(VetOrder::facts).toList();
    }
}
