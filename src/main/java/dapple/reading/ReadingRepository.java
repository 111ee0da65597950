package dapple.reading;

import dapple.light.quantity.Quantity;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.domain.Limit;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.Pageable;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

/** Readings are added and read. There is no way here to change or delete one. */
interface ReadingRepository extends Repository<Reading, Long> {
    String OF_A_JUDGED = "new dapple.reading.JudgedReading(r.id, p.enclosureId, r.pointId, r.meterId, r.recordedBy, "
            + "r.quantity, r.takenAt, d.id, d.speciesId, d.targetVersionId, d.vetOrderId, d.state, d.amount, d.low, "
            + "d.high, d.mayExceed, d.finerThanMeter, d.noGradient, r.heldAsAsked";
    String JUDGED = "select " + OF_A_JUDGED + ", cast(null as Instant)) ";
    String OF_A_LATEST = OF_A_JUDGED + ", l.stateSince)";
    String POINT = "join MeasuringPoint p on p.id = r.pointId ";
    String AT_POINT = "from Reading r " + POINT;
    String WITH_VERDICT = "join Verdict d on d.readingId = r.id and d.replacedAt is null ";
    String OF_LATEST = "from LatestReading l join Reading r on r.id = l.readingId " + POINT
            + "join Verdict d on d.id = l.verdictId ";
    String WITH_METER = "select new dapple.reading.LatestRead(" + OF_A_LATEST + ", new dapple.meter.MeterFacts("
            + "m.id, m.code, m.description, m.quantity, m.resolution, m.budgetShare, m.statedShare, m.lender, "
            + "m.borrowedUntil, m.rangeLow, m.rangeHigh, m.calibrationDueOn)) " + OF_LATEST
            + "join Meter m on m.id = r.meterId ";
    String CURRENT = "not exists (select 1 from Reading n where n.supersedesId = r.id) "
            + "and not exists (select 1 from ReadingWithdrawal w where w.readingId = r.id) ";

    /** The same for many rows: the embedded database asks anew for each row what is inside of {@code exists}. */
    String WITH_WHAT_ENDED_IT =
            "left join Reading n on n.supersedesId = r.id " + "left join ReadingWithdrawal w on w.readingId = r.id ";

    String NOT_ENDED = "n.id is null and w.id is null ";

    Reading saveAndFlush(Reading reading);

    @Query("select r from Reading r join fetch r.visit where r.siteId = :siteId and r.id = :id")
    Optional<Reading> findAtSite(long siteId, long id);

    @Query("select r from Reading r join fetch r.visit where r.entryKey = :key")
    Optional<Reading> findByKey(UUID key);

    @Query("select r from Reading r where r.visit.id = :visitId and " + CURRENT + "order by r.id")
    List<Reading> currentOfVisit(long visitId);

    @Query("select r from Reading r join r.visit v where r.siteId = :siteId and v.entryKey = :visitKey and " + CURRENT)
    List<Reading> currentOfVisit(long siteId, UUID visitKey);

    /** In the order of their index from its first column, so that H2 reads as many as are asked for and no more. */
    @Query(JUDGED + AT_POINT + WITH_VERDICT
            + "where r.pointId = :pointId and r.quantity = :quantity and r.heldAsAsked = true and " + CURRENT
            + "order by r.pointId desc, r.quantity desc, r.takenAt desc, r.id desc, d.id")
    List<JudgedReading> newestFirst(long pointId, Quantity quantity, Limit limit);

    @Query(JUDGED + AT_POINT + WITH_VERDICT + "where r.siteId = :siteId and r.id = :readingId order by d.id")
    List<JudgedReading> judged(long siteId, long readingId);

    @Query(WITH_METER + "where l.siteId = :siteId")
    List<LatestRead> latestAtSite(long siteId);

    @Query(WITH_METER + "where l.siteId = :siteId and l.enclosureId = :enclosureId")
    List<LatestRead> latestIn(long siteId, long enclosureId);

    @Query("select " + OF_A_LATEST + " " + OF_LATEST + "where l.siteId = :siteId and l.enclosureId = :enclosureId")
    List<JudgedReading> newestIn(long siteId, long enclosureId);

    /** Over [from, to), for one species, whatever else was judged for others; points that are judged for nobody included. */
    @Query(JUDGED + AT_POINT + WITH_VERDICT
            + WITH_WHAT_ENDED_IT
            + "where p.siteId = :siteId and p.enclosureId in :enclosureIds "
            + "and (d.speciesId = :speciesId or d.speciesId is null) "
            + "and r.takenAt >= :from and r.takenAt < :to and " + NOT_ENDED
            + "order by r.takenAt desc, r.id desc")
    List<JudgedReading> inEnclosures(
            long siteId, Collection<Long> enclosureIds, long speciesId, Instant from, Instant to);

    @Query("select max(r.takenAt) from Reading r where r.pointId = :pointId and r.quantity = :quantity "
            + "and r.takenAt < :before and " + CURRENT)
    Optional<Instant> lastBefore(long pointId, Quantity quantity, Instant before);

    @Query("select new dapple.reading.ReadingTaken(r.id, r.pointId, r.quantity, r.takenAt) "
            + AT_POINT + "where p.enclosureId = :enclosureId and r.takenAt >= :from and " + CURRENT
            + "order by r.takenAt, r.id")
    List<ReadingTaken> takenFrom(long enclosureId, Instant from, Limit limit);

    @Query("select r.takenAt " + AT_POINT + "where p.siteId = :siteId and p.enclosureId = :enclosureId "
            + "and r.takenAt >= :from and " + CURRENT + "order by r.takenAt desc, r.id desc")
    List<Instant> timesIn(long siteId, long enclosureId, Instant from, Limit limit);

    @Query(JUDGED + AT_POINT + WITH_VERDICT
            + WITH_WHAT_ENDED_IT + "where r.siteId = :siteId and r.pointId = :pointId and r.quantity = :quantity "
            + "and r.heldAsAsked = true "
            + "and r.takenAt >= :from and " + NOT_ENDED + "order by r.takenAt desc, r.id desc, d.id")
    List<JudgedReading> courseOf(long siteId, long pointId, Quantity quantity, Instant from);

    @Query(JUDGED + AT_POINT + WITH_VERDICT
            + WITH_WHAT_ENDED_IT + "where p.siteId = :siteId and p.enclosureId = :enclosureId and r.heldAsAsked = true "
            + "and r.takenAt >= :from and " + NOT_ENDED + "order by r.takenAt desc, r.id desc, d.id")
    List<JudgedReading> inEnclosureSince(long siteId, long enclosureId, Instant from, Limit limit);

    @Query("select count(n) > 0 from Reading n where n.supersedesId = :readingId")
    boolean isSuperseded(long readingId);

    @Query(RecordedReading.SELECT + "where r.siteId = :siteId and r.id = :readingId")
    Optional<RecordedReading> recorded(long siteId, long readingId);

    /** Everything that was written down, superseded and withdrawn readings too, newest first. */
    @Query(
            value = RecordedReading.SELECT + "where r.siteId = :siteId and r.pointId in :points "
                    + "and r.quantity in :quantities order by r.takenAt desc, r.id desc",
            countQuery = "select count(r) from Reading r where r.siteId = :siteId and r.pointId in :points "
                    + "and r.quantity in :quantities")
    Page<RecordedReading> recordedAt(
            long siteId, Collection<Long> points, Collection<Quantity> quantities, Pageable page);

    @Query(RecordedReading.SELECT + "where r.siteId = :siteId and r.id in :readingIds order by r.takenAt, r.id")
    List<RecordedReading> recordedOf(long siteId, Collection<Long> readingIds);

    /** What is asked at points now and was read over [from, to) as asked and still stands, by the index of each step. */
    @Query("select new dapple.reading.StepTaken(r.pointId, r.quantity, r.takenAt) from MeasuringPoint m "
            + "join m.quantities q join Reading r on r.pointId = m.id and r.quantity = q "
            + "where m.siteId = :siteId and m.id in :points and r.takenAt >= :from and r.takenAt < :to "
            + "and r.heldAsAsked = true and " + CURRENT)
    List<StepTaken> taken(long siteId, Collection<Long> points, Instant from, Instant to);

    /** What is asked at points now and was read there before an instant. */
    @Query("select new dapple.reading.StepKnown(m.id, q) from MeasuringPoint m join m.quantities q "
            + "where m.siteId = :siteId and m.id in :points and exists (select 1 from Reading r "
            + "where r.pointId = m.id and r.quantity = q and r.takenAt < :before)")
    List<StepKnown> known(long siteId, Collection<Long> points, Instant before);

    /**
     * The next of those that were taken over [from, to), whatever became of them, in the order in which they were stored. By
     * the index of sites the embedded database would look at all of a site for each few; the sum keeps it to the key.
     */
    @Query(RecordedReading.SELECT + "where r.siteId + 0 = :siteId and r.id > :after and r.takenAt >= :from "
            + "and r.takenAt < :to order by r.id")
    List<RecordedReading> recordedAfter(long siteId, long after, Instant from, Instant to, Limit limit);

    /** The same at some points and of some quantities, of all times. */
    @Query(RecordedReading.SELECT + "where r.siteId + 0 = :siteId and r.id > :after and r.pointId in :points "
            + "and r.quantity in :quantities order by r.id")
    List<RecordedReading> recordedAfterAt(
            long siteId, long after, Collection<Long> points, Collection<Quantity> quantities, Limit limit);

    @Query("select r.supersedesId from Reading r where r.siteId = :siteId and r.supersedesId is not null")
    List<Long> corrected(long siteId);

    @Query("select w.readingId from ReadingWithdrawal w where w.siteId = :siteId")
    List<Long> withdrawn(long siteId);
}
