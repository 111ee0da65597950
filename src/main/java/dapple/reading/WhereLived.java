package dapple.reading;

import dapple.animal.StayFacts;
import java.time.Instant;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Where an animal lived, and what its readings were judged by.
 *
 * @param stays those that count for it, its group's among them
 * @param orderIds vets' orders for it, its group's among them
 */
public record WhereLived(List<StayFacts> stays, long speciesId, Set<Long> orderIds) {
    /** By an order of its own before the target of its species. */
    private static final Comparator<JudgedReading> OWN_ORDER_FIRST =
            Comparator.comparing((JudgedReading one) -> one.orderId().isEmpty());

    Set<Long> enclosureIds() {
        return stays.stream().map(StayFacts::enclosureId).collect(Collectors.toSet());
    }

    /** One verdict of each reading that was taken where and while it lived there, in the order given. */
    List<JudgedReading> ofTheAnimal(List<JudgedReading> found) {
        Map<Long, JudgedReading> byReading = new LinkedHashMap<>();
        found.stream()
                .filter(one -> lived(one.enclosureId(), one.takenAt()))
                .filter(one -> orderIds.containsAll(one.orderId().stream().toList()))
                .forEach(one -> byReading.merge(one.readingId(), one, WhereLived::own));
        return List.copyOf(byReading.values());
    }

    private boolean lived(long enclosureId, Instant at) {
        return stays.stream().anyMatch(stay -> stay.enclosureId() == enclosureId && stay.holds(at));
    }

    private static JudgedReading own(JudgedReading one, JudgedReading other) {
        return OWN_ORDER_FIRST.compare(one, other) <= 0 ? one : other;
    }
}
