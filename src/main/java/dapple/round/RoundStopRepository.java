package dapple.round;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface RoundStopRepository extends JpaRepository<RoundStop, Long> {
    /**
     * Where the rounds of a site stand, a row for each thing to read: with the newest reading there, the last reason why
     * it was not read, and what was said of the newest walk that was due and of later ones.
     */
    String ROWS = "select new dapple.round.StepRow(p, w, g.name, "
            + "new dapple.round.StopPlace(e.id, e.code, r.id, r.name), e.retiredAt, o.fromAt, "
            + "m.id, m.code, q, (select count(t.id) from Meter t "
            + "where t.siteId = p.siteId and t.quantity = q and t.retiredAt is null), "
            + "l.takenAt, (select max(u.notedAt) from UnreadPoint u "
            + "where u.pointId = m.id and (u.quantity is null or u.quantity = q))) "
            + "from RoundPlan p join RoundStop s on s.planId = p.id "
            + "join Enclosure e on e.id = s.enclosureId join e.room r "
            + "left join PlannedOff o on o.enclosureId = e.id and o.calledOffAt is null "
            + "and o.fromAt <= :now and (o.toAt is null or o.toAt > :now) "
            + "left join MeasuringPoint m on m.enclosureId = e.id and m.retiredAt is null "
            + "left join m.quantities q "
            + "left join LatestReading l on l.pointId = m.id and l.quantity = q "
            + "left join RoundWalk w on w.planId = p.id and (w.dueOn > :today or w.dueOn = "
            + "(select max(v.dueOn) from RoundWalk v where v.planId = p.id and v.dueOn <= :today)) "
            + "left join Person g on w.givenRole is null and g.id = coalesce(w.givenPersonId, p.personId) ";

    String ORDER = " order by p.id, s.place, s.id, m.walkingOrder, m.id";

    /** Of the rounds that have not ended by a day. */
    @Query(ROWS + "where p.siteId = :siteId and (p.lastDay is null or p.lastDay >= :goingOn)" + ORDER)
    List<StepRow> rows(long siteId, LocalDate today, Instant now, LocalDate goingOn);

    @Query(ROWS + "where p.siteId = :siteId and p.id = :planId" + ORDER)
    List<StepRow> rowsOf(long siteId, long planId, LocalDate today, Instant now);

    @Query("select s from RoundStop s where s.planId = :planId order by s.place, s.id")
    List<RoundStop> ofPlan(long planId);
}
