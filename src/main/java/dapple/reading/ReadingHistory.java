package dapple.reading;

import dapple.enclosure.Enclosures;
import dapple.enclosure.PointFacts;
import dapple.light.quantity.Quantity;
import dapple.meter.MeterFacts;
import dapple.meter.Meters;
import dapple.site.NotFoundException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.PageRequest;
import org.springframework.data.domain.Pageable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Everything that was ever read in an enclosure: what counts, what was corrected and what was withdrawn. */
@Service
class ReadingHistory {
    private final ReadingRepository readings;
    private final VerdictRepository verdicts;
    private final Enclosures enclosures;
    private final Meters meters;

    ReadingHistory(ReadingRepository readings, VerdictRepository verdicts, Enclosures enclosures, Meters meters) {
        this.readings = readings;
        this.verdicts = verdicts;
        this.enclosures = enclosures;
        this.meters = meters;
    }

    /** The points that an enclosure has or had, in walking order. */
    @Transactional(readOnly = true)
    public List<PointFacts> points(long siteId, long enclosureId) {
        return enclosures.everyPointOf(siteId, enclosureId);
    }

    /**
     * Newest first.
     *
     * @param points those of the enclosure
     * @param page from 0
     */
    @Transactional(readOnly = true)
    public Page<HistoryLine> page(long siteId, List<PointFacts> points, Wanted wanted, int page) {
        Map<Long, PointFacts> known = points.stream().collect(Collectors.toMap(PointFacts::id, Function.identity()));
        Pageable asked = PageRequest.of(page, Readings.PAGE_SIZE);
        List<Long> ids = wanted.points(known);
        Page<RecordedReading> found =
                ids.isEmpty() ? Page.empty(asked) : readings.recordedAt(siteId, ids, wanted.quantities(), asked);
        Map<Long, List<HistoryVerdict>> said = said(found.getContent());
        Map<Long, MeterFacts> meterById = meters.byId(siteId);
        return found.map(reading -> HistoryLine.of(
                reading,
                known(known, reading.pointId()),
                known(meterById, reading.meterId()),
                said.getOrDefault(reading.id(), List.of())));
    }

    private Map<Long, List<HistoryVerdict>> said(List<RecordedReading> found) {
        List<Long> ids = found.stream().map(RecordedReading::id).toList();
        return ids.isEmpty()
                ? Map.of()
                : verdicts.ofReadings(ids).stream().collect(Collectors.groupingBy(HistoryVerdict::readingId));
    }

    private static <T> T known(Map<Long, T> byId, long id) {
        return Optional.ofNullable(byId.get(id)).orElseThrow(NotFoundException::new);
    }

    /** Which readings are wanted: of one point or all, of one quantity or all. */
    record Wanted(Optional<Long> pointId, Optional<Quantity> quantity) {
        List<Long> points(Map<Long, PointFacts> known) {
            pointId.ifPresent(id -> known(known, id));
            return pointId.map(List::of).orElseGet(() -> List.copyOf(known.keySet()));
        }

        List<Quantity> quantities() {
            return quantity.map(List::of).orElseGet(() -> List.of(Quantity.values()));
        }
    }
}
