package dapple.comparison;

import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.Enclosures;
import dapple.enclosure.PointFacts;
import dapple.light.quantity.Quantity;
import dapple.reading.RecentReading;
import dapple.reading.RecentReadings;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** The points of a site at which meters may be compared. */
@Component
class Places {
    /** An older reading says nothing of how strong the light is now (ours). */
    private static final Duration LATELY = Duration.ofDays(90);

    private final Enclosures enclosures;
    private final RecentReadings readings;
    private final Clock clock;

    Places(Enclosures enclosures, RecentReadings readings, Clock clock) {
        this.enclosures = enclosures;
        this.readings = readings;
        this.clock = clock;
    }

    /** The points in use at which a quantity is asked, in walking order. */
    @Transactional(readOnly = true)
    List<Candidate> of(long siteId, Quantity quantity) {
        List<EnclosureFacts> inUse = enclosures.inWalkingOrder(siteId);
        Map<Long, List<PointFacts>> points = enclosures.pointsByEnclosure(siteId);
        Map<Long, Double> amounts =
                amounts(siteId, quantity, inUse.stream().map(EnclosureFacts::id).toList());
        return inUse.stream()
                .flatMap(enclosure -> points.getOrDefault(enclosure.id(), List.of()).stream()
                        .filter(point -> point.quantities().contains(quantity))
                        .map(point -> new Candidate(enclosure, point, Optional.ofNullable(amounts.get(point.id())))))
                .toList();
    }

    private Map<Long, Double> amounts(long siteId, Quantity quantity, List<Long> enclosureIds) {
        return readings.in(siteId, enclosureIds, 1).stream()
                .filter(reading -> reading.quantity() == quantity)
                .filter(reading -> reading.takenAt().isAfter(clock.instant().minus(LATELY)))
                .collect(Collectors.toMap(RecentReading::pointId, RecentReading::amount, (newest, older) -> newest));
    }

    /** All points that a site has or had with their enclosures, by the point's id. */
    @Transactional(readOnly = true)
    Map<Long, Candidate> byId(long siteId) {
        Map<Long, EnclosureFacts> all =
                enclosures.all(siteId).stream().collect(Collectors.toMap(EnclosureFacts::id, Function.identity()));
        return enclosures.pointsById(siteId).values().stream()
                .flatMap(point -> Optional.ofNullable(all.get(point.enclosureId())).stream()
                        .map(enclosure -> new Candidate(enclosure, point, Optional.empty())))
                .collect(Collectors.toMap(place -> place.point().id(), Function.identity()));
    }
}
