package dapple.reading;

import dapple.animal.StayFacts;
import dapple.enclosure.PointFacts;
import dapple.light.judging.PointRole;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Where an animal lived, and what its readings were judged by.
 *
 * @param stays those that count for it, its group's among them
 * @param orderIds vets' orders for it, its group's among them
 * @param points all of the site, by id
 */
public record WhereLived(List<StayFacts> stays, long speciesId, Set<Long> orderIds, Map<Long, PointFacts> points) {
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
                .filter(this::counts)
                .filter(one -> orderIds.containsAll(one.orderId().stream().toList()))
                .forEach(one -> byReading.merge(one.readingId(), one, WhereLived::own));
        return List.copyOf(byReading.values());
    }

    /** Whether it lived there then, and the point served it: a reading at others' points is none of its own. */
    private boolean counts(JudgedReading one) {
        return stays.stream()
                .filter(stay -> stay.enclosureId() == one.enclosureId() && stay.holds(one.takenAt()))
                .anyMatch(stay -> served(one, stay.animal().id()));
    }

    private boolean served(JudgedReading one, long recordId) {
        return Optional.ofNullable(points.get(one.pointId()))
                .filter(point -> point.role() == PointRole.KEEPER || point.serves(speciesId, recordId))
                .isPresent();
    }

    private static JudgedReading own(JudgedReading one, JudgedReading other) {
        return OWN_ORDER_FIRST.compare(one, other) <= 0 ? one : other;
    }
}
