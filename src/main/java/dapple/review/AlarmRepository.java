package dapple.review;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.springframework.data.domain.Limit;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface AlarmRepository extends JpaRepository<Alarm, Long> {
    /** Newest readings of points that are over the ceiling and have raised no alarm yet. */
    String PRESENT = "select distinct new dapple.review.AlarmRepository$Harm(r.siteId, v.enclosureId, r.pointId, r.id) "
            + "from LatestReading l join Reading r on r.id = l.readingId join r.visit v "
            + "join Verdict d on d.readingId = r.id where d.replacedAt is null "
            + "and d.state = dapple.light.judging.State.OVER_CEILING "
            + "and not exists (select 1 from Alarm a where a.readingId = r.id) ";

    @Query("select a from Alarm a where a.siteId = :siteId and a.id = :id")
    Optional<Alarm> findAtSite(long siteId, long id);

    /** What nobody has seen; a number that was corrected or withdrawn meanwhile alarms nobody. */
    @Query("""
            select new dapple.review.AlarmFacts(a.id, e.id, e.code, p.code, p.place, r.id, r.takenAt,
            case when exists (select 1 from Verdict d where d.readingId = r.id and d.replacedAt is null
            and d.state = dapple.light.judging.State.OVER_CEILING) then true else false end,
            case when exists (select 1 from Verdict d join Animal b on b.speciesId = d.speciesId
            join Stay s on s.animal = b
            where d.readingId = r.id and d.replacedAt is null
            and d.state = dapple.light.judging.State.OVER_CEILING
            and s.enclosureId = e.id and s.openAnimalId is not null and s.withdrawnAt is null
            and (d.vetOrderId is null
            or exists (select 1 from VetOrder o where o.id = d.vetOrderId and o.animalId = b.id)))
            then true else false end,
            case when exists (select 1 from LatestReading l
            where l.pointId = r.pointId and l.quantity = r.quantity and l.readingId <> r.id and l.takenAt >= r.takenAt
            and l.state is not null and l.state not in (dapple.light.judging.State.OVER_CEILING,
            dapple.light.judging.State.NO_TARGET)) then true else false end)
            from Alarm a join Enclosure e on e.id = a.enclosureId join MeasuringPoint p on p.id = a.pointId
            join Reading r on r.id = a.readingId
            where a.siteId = :siteId and a.seenAt is null
            and not exists (select 1 from Reading n where n.supersedesId = r.id)
            and not exists (select 1 from ReadingWithdrawal w where w.readingId = r.id)
            order by a.raisedAt, a.id""")
    List<AlarmFacts> unseen(long siteId);

    /** What stood in the banner of an enclosure before an alarm. */
    @Query("""
            select a from Alarm a
            where a.siteId = :siteId and a.enclosureId = :enclosureId and a.id < :alarmId and a.seenAt is null
            and not exists (select 1 from Reading n where n.supersedesId = a.readingId)
            and not exists (select 1 from ReadingWithdrawal w where w.readingId = a.readingId)""")
    List<Alarm> shownBefore(long siteId, long enclosureId, long alarmId);

    /** A reading that is over the ceiling for somebody and has raised no alarm yet. */
    @Query("""
            select distinct new dapple.review.AlarmRepository$Harm(r.siteId, v.enclosureId, r.pointId, r.id)
            from Verdict d join Reading r on r.id = d.readingId join r.visit v
            where d.readingId = :readingId and d.replacedAt is null
            and d.state = dapple.light.judging.State.OVER_CEILING
            and not exists (select 1 from Alarm a where a.readingId = r.id)""")
    Optional<Harm> harm(long readingId);

    /** The readings of a visit that are the newest at their points, over the ceiling, and have raised no alarm yet. */
    @Query(PRESENT + "and v.id = :visitId order by r.id")
    List<Harm> presentHarms(long visitId);

    /** The same of all visits of a site. */
    @Query(PRESENT + "and l.siteId = :siteId order by r.id")
    List<Harm> presentHarmsAtSite(long siteId);

    /** What nobody had seen at an instant, corrections and withdrawals that had been recorded by then left out. */
    @Query("""
            select new dapple.review.AlarmOnRecord(a.readingId, p.code, p.place, a.raisedAt, a.seenAt, a.seenBy)
            from Alarm a join MeasuringPoint p on p.id = a.pointId
            where a.siteId = :siteId and a.enclosureId = :enclosureId and a.raisedAt <= :at
            and (a.seenAt is null or a.seenAt > :at)
            and not exists (select 1 from Reading n where n.supersedesId = a.readingId and n.recordedAt <= :at)
            and not exists (select 1 from ReadingWithdrawal w where w.readingId = a.readingId and w.recordedAt <= :at)
            order by a.raisedAt desc, a.id desc""")
    List<AlarmOnRecord> unseenAt(long siteId, long enclosureId, Instant at, Limit limit);

    /** A reading over the ceiling, and where it was taken. */
    record Harm(long siteId, long enclosureId, long pointId, long readingId) {}
}
