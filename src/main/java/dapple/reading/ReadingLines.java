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
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;
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
        List<RecordedReading> changed = readings.changed(siteId, from, to);
        List<Long> later = changed.stream()
                .flatMap(reading -> reading.correctedBy().stream())
                .toList();
        Map<Long, RecordedReading> instead = later.isEmpty()
                ? Map.of()
                : readings.recordedOf(siteId, later).stream()
                        .collect(Collectors.toMap(RecordedReading::id, Function.identity()));
        Known known = new Known(siteId);
        return changed.stream()
                .map(reading -> known.undone(reading, reading.correctedBy().map(instead::get)))
                .toList();
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
