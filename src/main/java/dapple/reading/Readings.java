package dapple.reading;

import dapple.enclosure.Enclosures;
import dapple.enclosure.PointFacts;
import dapple.light.quantity.Quantity;
import dapple.meter.MeterFacts;
import dapple.meter.Meters;
import dapple.order.OrderFacts;
import dapple.order.VetOrders;
import dapple.site.NotFoundException;
import dapple.target.Targets;
import dapple.target.TargetsKnown;
import java.time.Instant;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.data.domain.Limit;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Readings as pages show them. */
@Service
public class Readings {
    /** Readings on one page of a history. */
    public static final int PAGE_SIZE = 50;

    private final ReadingRepository readings;
    private final Enclosures enclosures;
    private final Meters meters;
    private final Targets targets;
    private final VetOrders orders;

    Readings(ReadingRepository readings, Enclosures enclosures, Meters meters, Targets targets, VetOrders orders) {
        this.readings = readings;
        this.enclosures = enclosures;
        this.meters = meters;
        this.targets = targets;
        this.orders = orders;
    }

    /** The newest reading of each quantity at the points at hand, by point; the UV index first. */
    @Transactional(readOnly = true)
    public Map<Long, List<ReadingView>> latestAtSite(long siteId, Stream<PointFacts> points) {
        return byPoint(siteId, readings.latestAtSite(siteId), points);
    }

    /** The same at the points at hand of one enclosure. */
    @Transactional(readOnly = true)
    public Map<Long, List<ReadingView>> latestIn(long siteId, long enclosureId, Collection<PointFacts> points) {
        return byPoint(siteId, readings.latestIn(siteId, enclosureId), points.stream());
    }

    /** The same as numbers alone. */
    @Transactional(readOnly = true)
    public List<JudgedReading> newestIn(long siteId, long enclosureId) {
        return readings.newestIn(siteId, enclosureId);
    }

    /**
     * What was read at a point as asked and still stands, newest first; a reading that was judged for several species comes
     * once for each.
     */
    @Transactional(readOnly = true)
    public List<JudgedReading> since(long siteId, PointFacts point, Quantity quantity, Instant from) {
        return readings.courseOf(siteId, point.id(), quantity, from);
    }

    /**
     * What was read in an enclosure as asked since an instant and still stands, newest first, not more often than asked; a
     * reading that was judged for several species comes once for each.
     */
    @Transactional(readOnly = true)
    public List<JudgedReading> inEnclosureSince(long siteId, long enclosureId, Instant from, int most) {
        return readings.inEnclosureSince(siteId, enclosureId, from, Limit.of(most));
    }

    /** When something was read in an enclosure since an instant, newest first, not more often than asked. */
    @Transactional(readOnly = true)
    public List<Instant> timesIn(long siteId, long enclosureId, Instant from, int most) {
        return readings.timesIn(siteId, enclosureId, from, Limit.of(most));
    }

    private Map<Long, List<ReadingView>> byPoint(long siteId, List<LatestRead> newest, Stream<PointFacts> points) {
        Map<Long, PointFacts> byId = points.collect(Collectors.toMap(PointFacts::id, Function.identity()));
        List<JudgedReading> there = newest.stream()
                .map(LatestRead::reading)
                .filter(one -> byId.containsKey(one.pointId()))
                .toList();
        Map<Long, MeterFacts> meterById = newest.stream()
                .map(LatestRead::meter)
                .collect(Collectors.toMap(MeterFacts::id, Function.identity(), (one, same) -> one));
        return views(siteId, there, byId, meterById).stream()
                .sorted(Comparator.comparing(view -> view.reading().quantity()))
                .collect(Collectors.groupingBy(view -> view.point().id()));
    }

    /** What one reading was judged to be, for each species that it counts for; the gravest first. */
    @Transactional(readOnly = true)
    public List<ReadingView> judged(long siteId, long readingId) {
        List<JudgedReading> found = readings.judged(siteId, readingId);
        if (found.isEmpty()) {
            throw new NotFoundException();
        }
        return views(siteId, found, enclosures.pointsById(siteId), meters.byId(siteId)).stream()
                .sorted(ReadingView.GRAVEST_FIRST)
                .toList();
    }

    /**
     * What was read over [from, to) where an animal lived while it lived there, as it was judged for it, newest first.
     * Whose verdict is not made yet, as an order has come late, is missing until it is.
     */
    @Transactional(readOnly = true)
    public List<JudgedReading> whereLived(long siteId, WhereLived lived, Instant from, Instant to) {
        return lived.enclosureIds().isEmpty()
                ? List.of()
                : lived.ofTheAnimal(readings.inEnclosures(siteId, lived.enclosureIds(), lived.speciesId(), from, to));
    }

    /** The key of the visit in which a reading was taken. */
    @Transactional(readOnly = true)
    public UUID visitKey(long siteId, long readingId) {
        return readings.findAtSite(siteId, readingId)
                .map(reading -> reading.visit().entryKey())
                .orElseThrow(NotFoundException::new);
    }

    /** When a quantity was last read at a point before an instant. */
    @Transactional(readOnly = true)
    public Optional<Instant> lastBefore(long pointId, Quantity quantity, Instant before) {
        return readings.lastBefore(pointId, quantity, before);
    }

    /** The first reading taken in an enclosure at or after an instant, at any point, that still stands. */
    @Transactional(readOnly = true)
    public Optional<ReadingTaken> firstAfter(long enclosureId, Instant from) {
        return readings.takenFrom(enclosureId, from, Limit.of(1)).stream().findFirst();
    }

    /** A reading as it was written down, and what became of it. */
    @Transactional(readOnly = true)
    public RecordedReading recorded(long siteId, long readingId) {
        return readings.recorded(siteId, readingId).orElseThrow(NotFoundException::new);
    }

    private List<ReadingView> views(
            long siteId, List<JudgedReading> found, Map<Long, PointFacts> points, Map<Long, MeterFacts> meterById) {
        Set<Long> targetIds =
                found.stream().flatMap(one -> one.targetVersionId().stream()).collect(Collectors.toSet());
        Set<Long> speciesIds =
                found.stream().flatMap(one -> one.speciesId().stream()).collect(Collectors.toSet());
        TargetsKnown known = targets.known(siteId, targetIds, speciesIds);
        Set<Long> orderIds =
                found.stream().flatMap(one -> one.orderId().stream()).collect(Collectors.toSet());
        Map<Long, OrderFacts> orderById = orders.byId(siteId, orderIds);
        return found.stream()
                .map(one -> new ReadingView(
                        one,
                        known(points, one.pointId()),
                        known(meterById, one.meterId()),
                        one.targetVersionId().map(known.byId()::get),
                        known.newerThan(one.speciesId(), one.targetVersionId()),
                        one.orderId().map(orderById::get)))
                .toList();
    }

    private static <T> T known(Map<Long, T> byId, long id) {
        T found = byId.get(id);
        if (found == null) {
            throw new NotFoundException();
        }
        return found;
    }
}
