package dapple.reading;

import dapple.enclosure.Enclosures;
import dapple.enclosure.PointFacts;
import dapple.light.quantity.Quantity;
import dapple.meter.MeterFacts;
import dapple.meter.Meters;
import dapple.site.Given;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What had been read in an enclosure at an instant, and what people were told of it. */
@Service
public class ReadingRecords {
    private static final String QUANTITIES = Arrays.stream(Quantity.values())
            .map(quantity -> "('" + quantity.name() + "')")
            .collect(Collectors.joining(", "));

    /** By what is known now, and by what had been recorded then. */
    private static final String NEWEST = newest("") + " union " + newest("r.recorded_at <= :at and ");

    private final JdbcClient database;
    private final ReadingRepository readings;
    private final VerdictRepository verdicts;
    private final Enclosures enclosures;
    private final Meters meters;

    ReadingRecords(
            JdbcClient database,
            ReadingRepository readings,
            VerdictRepository verdicts,
            Enclosures enclosures,
            Meters meters) {
        this.database = database;
        this.readings = readings;
        this.verdicts = verdicts;
        this.enclosures = enclosures;
        this.meters = meters;
    }

    /** One step of the index for each point and quantity, however long the record is. */
    private static String newest(String recorded) {
        String gone = recorded.isEmpty() ? "" : " and %s.recorded_at <= :at";
        return "select (select r.id from reading r where r.point_id = p.id and r.quantity = q.quantity"
                + " and " + recorded + "r.taken_at <= :at"
                + " and not exists (select 1 from reading n where n.supersedes_id = r.id" + gone.formatted("n") + ")"
                + " and not exists (select 1 from reading_withdrawal w where w.reading_id = r.id" + gone.formatted("w")
                + ") order by r.taken_at desc, r.id desc fetch first 1 rows only) as reading_id"
                + " from measuring_point p cross join (values " + QUANTITIES + ") as q (quantity)"
                + " where p.site_id = :siteId and p.enclosure_id = :enclosureId";
    }

    /**
     * The newest reading of each point and quantity at an instant: by what is known now and, where that is another, by
     * what had been recorded then. In walking order.
     */
    @Transactional(readOnly = true)
    public List<ReadingOnRecord> at(long siteId, long enclosureId, Instant at) {
        List<RecordedReading> found = readings.recordedOf(siteId, newest(siteId, enclosureId, at));
        List<PointFacts> points = enclosures.everyPointOf(siteId, enclosureId);
        Map<Long, PointFacts> byId = points.stream().collect(Collectors.toMap(PointFacts::id, point -> point));
        Map<Long, List<HistoryVerdict>> said =
                verdicts.ofReadings(found.stream().map(RecordedReading::id).toList()).stream()
                        .collect(Collectors.groupingBy(HistoryVerdict::readingId));
        Map<Long, MeterFacts> meterById = meters.byId(siteId);
        return found.stream()
                .map(reading -> onRecord(
                        reading,
                        Given.of(byId.get(reading.pointId())),
                        Given.of(meterById.get(reading.meterId())),
                        said.getOrDefault(reading.id(), List.of()),
                        at))
                .sorted(Comparator.<ReadingOnRecord>comparingInt(one -> points.indexOf(one.point()))
                        .thenComparing(one -> one.reading().quantity()))
                .toList();
    }

    private List<Long> newest(long siteId, long enclosureId, Instant at) {
        return database.sql("select reading_id from (" + NEWEST + ") picked where reading_id is not null")
                .param("siteId", siteId)
                .param("enclosureId", enclosureId)
                .param("at", OffsetDateTime.ofInstant(at, ZoneOffset.UTC))
                .query(Long.class)
                .list();
    }

    private static ReadingOnRecord onRecord(
            RecordedReading reading, PointFacts point, MeterFacts meter, List<HistoryVerdict> said, Instant at) {
        boolean stood = reading.stoodAt(at);
        return new ReadingOnRecord(
                reading,
                point,
                meter,
                stood,
                said.stream().filter(verdict -> stood && verdict.stoodAt(at)).toList(),
                said.stream()
                        .filter(verdict -> reading.isStanding() && verdict.isStanding())
                        .toList());
    }
}
