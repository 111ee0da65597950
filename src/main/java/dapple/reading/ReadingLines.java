package dapple.reading;

import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.Enclosures;
import dapple.enclosure.PointFacts;
import dapple.light.judging.Limits;
import dapple.light.quantity.Quantity;
import dapple.meter.MeterFacts;
import dapple.meter.Meters;
import dapple.order.OrderFacts;
import dapple.order.VetOrders;
import dapple.site.Given;
import dapple.target.Target;
import dapple.target.Targets;
import java.time.Instant;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.data.domain.Limit;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Gives out many readings one after another, in the order in which they were stored, and holds few of them at a time. */
@Service
public class ReadingLines {
    private static final Limit AT_ONCE = Limit.of(1000);

    private final ReadingRepository readings;
    private final VerdictRepository verdicts;
    private final Enclosures enclosures;
    private final Meters meters;
    private final Targets targets;
    private final VetOrders orders;

    ReadingLines(
            ReadingRepository readings,
            VerdictRepository verdicts,
            Enclosures enclosures,
            Meters meters,
            Targets targets,
            VetOrders orders) {
        this.readings = readings;
        this.verdicts = verdicts;
        this.enclosures = enclosures;
        this.meters = meters;
        this.targets = targets;
        this.orders = orders;
    }

    /** All of a site that were taken over [from, to). */
    @Transactional(readOnly = true)
    public void taken(long siteId, Instant from, Instant to, Consumer<ReadingLine> line) {
        each(
                siteId,
                after -> readings.recordedAfter(siteId, after, from, to, AT_ONCE),
                found -> verdicts.standingBetween(
                        siteId, found.get(0).id(), found.get(found.size() - 1).id()),
                line);
    }

    /** All of some points and quantities. */
    @Transactional(readOnly = true)
    public void at(long siteId, Collection<Long> points, Collection<Quantity> quantities, Consumer<ReadingLine> line) {
        if (points.isEmpty()) {
            return;
        }
        each(
                siteId,
                after -> readings.recordedAfterAt(siteId, after, points, quantities, AT_ONCE),
                found -> verdicts.standingOf(
                        found.stream().map(RecordedReading::id).toList()),
                line);
    }

    /** Of those that were taken over [from, to) the ones that were corrected or withdrawn, oldest first. */
    @Transactional(readOnly = true)
    public List<ReadingUndone> undone(long siteId, Instant from, Instant to) {
        Known known = new Known(siteId);
        return recorded(siteId, changed(siteId)).values().stream()
                .filter(reading ->
                        !reading.takenAt().isBefore(from) && reading.takenAt().isBefore(to))
                .sorted(Comparator.comparing(RecordedReading::takenAt).thenComparing(RecordedReading::id))
                .map(reading -> known.undone(reading, instead(siteId, reading)))
                .toList();
    }

    private List<Long> changed(long siteId) {
        return Stream.concat(readings.corrected(siteId).stream(), readings.withdrawn(siteId).stream())
                .distinct()
                .toList();
    }

    private Optional<RecordedReading> instead(long siteId, RecordedReading reading) {
        return reading.correctedBy().flatMap(later -> readings.recorded(siteId, later));
    }

    /** By their numbers; a few at a time, as statements may not name any number of them. */
    private Map<Long, RecordedReading> recorded(long siteId, List<Long> ids) {
        Map<Long, RecordedReading> found = new HashMap<>();
        for (int at = 0; at < ids.size(); at += AT_ONCE.max()) {
            List<Long> some = ids.subList(at, Math.min(ids.size(), at + AT_ONCE.max()));
            readings.recordedOf(siteId, some).forEach(reading -> found.put(reading.id(), reading));
        }
        return found;
    }

    private void each(
            long siteId,
            Function<Long, List<RecordedReading>> following,
            Function<List<RecordedReading>, List<HistoryVerdict>> said,
            Consumer<ReadingLine> line) {
        Known known = new Known(siteId);
        List<RecordedReading> found = following.apply(0L);
        while (!found.isEmpty()) {
            Map<Long, List<HistoryVerdict>> verdictsOf =
                    said.apply(found).stream().collect(Collectors.groupingBy(HistoryVerdict::readingId));
            for (RecordedReading reading : found) {
                known.lines(reading, verdictsOf.getOrDefault(reading.id(), List.of()), line);
            }
            found = following.apply(found.get(found.size() - 1).id());
        }
    }

    /** What lines are told with, asked once. */
    private final class Known {
        private final long siteId;
        private final Map<Long, PointFacts> points;
        private final Map<Long, EnclosureFacts> places;
        private final Map<Long, MeterFacts> meterById;
        private final Map<Long, Map<Integer, Target>> versions = new HashMap<>();
        private final Map<Long, Optional<OrderFacts>> ordered = new HashMap<>();

        /** By the readings that stand in their place, which come later. */
        private final Map<Long, RecordedReading> replaced = new HashMap<>();

        Known(long siteId) {
            this.siteId = siteId;
            this.points = enclosures.pointsById(siteId);
            this.places =
                    enclosures.all(siteId).stream().collect(Collectors.toMap(EnclosureFacts::id, Function.identity()));
            this.meterById = meters.byId(siteId);
        }

        void lines(RecordedReading reading, List<HistoryVerdict> said, Consumer<ReadingLine> line) {
            reading.correctedBy().ifPresent(later -> replaced.put(later, reading));
            Optional<RecordedReading> earlier = Optional.ofNullable(replaced.remove(reading.id()));
            if (said.isEmpty()) {
                line.accept(line(reading, Optional.empty(), earlier));
            }
            said.forEach(verdict -> line.accept(line(reading, Optional.of(verdict), earlier)));
        }

        ReadingUndone undone(RecordedReading reading, Optional<RecordedReading> instead) {
            PointFacts point = Given.of(points.get(reading.pointId()));
            return new ReadingUndone(reading, point, Given.of(places.get(point.enclosureId())), instead);
        }

        private ReadingLine line(
                RecordedReading reading, Optional<HistoryVerdict> verdict, Optional<RecordedReading> earlier) {
            PointFacts point = Given.of(points.get(reading.pointId()));
            return new ReadingLine(
                    reading,
                    point,
                    Given.of(places.get(point.enclosureId())),
                    Given.of(meterById.get(reading.meterId())),
                    verdict,
                    verdict.flatMap(found -> limits(reading.quantity(), found)),
                    earlier);
        }

        private Optional<Limits> limits(Quantity quantity, HistoryVerdict verdict) {
            Optional<Limits> ofSpecies = verdict.speciesId()
                    .flatMap(species -> verdict.target().flatMap(number -> target(species, number)))
                    .flatMap(target -> target.limits(quantity));
            Optional<OrderFacts> order = verdict.orderId().flatMap(this::order);
            return quantity == Quantity.UV_INDEX && order.isPresent()
                    ? order.map(found -> found.limits(ofSpecies))
                    : ofSpecies;
        }

        private Optional<Target> target(long species, int number) {
            Map<Integer, Target> course = versions.computeIfAbsent(
                    species,
                    id -> targets.courseOf(siteId, id).stream()
                            .collect(Collectors.toMap(Target::number, Function.identity())));
            return Optional.ofNullable(course.get(number));
        }

        private Optional<OrderFacts> order(long id) {
            return ordered.computeIfAbsent(
                    id,
                    asked -> Optional.ofNullable(
                            orders.byId(siteId, List.of(asked)).get(asked)));
        }
    }
}
