package dapple.enclosure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * An enclosure in use, and what counts there today.
 *
 * @param plannedOff the time for which its lamps are off on purpose, if they are
 * @param points those in use, in walking order
 */
public record EnclosureToday(EnclosureFacts enclosure, Optional<PlannedOffTime> plannedOff, List<PointFacts> points) {
    /** In their order; what is asked and served at a point is in each of its rows. */
    static List<EnclosureToday> of(List<Row> rows) {
        Map<Long, Row> enclosures = new LinkedHashMap<>();
        Map<Long, Map<Long, PointFacts>> points = new LinkedHashMap<>();
        for (Row row : rows) {
            long id = row.getEnclosure().id();
            enclosures.putIfAbsent(id, row);
            Map<Long, PointFacts> there = points.computeIfAbsent(id, none -> new LinkedHashMap<>());
            row.getPoint().map(MeasuringPoint::facts).ifPresent(point -> there.put(point.id(), point));
        }
        List<EnclosureToday> found = new ArrayList<>();
        enclosures.forEach((id, row) -> found.add(new EnclosureToday(
                row.getEnclosure().facts(),
                row.getPlannedOff().map(PlannedOff::time),
                List.copyOf(points.getOrDefault(id, Map.of()).values()))));
        return found;
    }

    /** An enclosure with one of its points, as the query names them. */
    interface Row {
        Enclosure getEnclosure();

        Optional<PlannedOff> getPlannedOff();

        Optional<MeasuringPoint> getPoint();
    }
}
