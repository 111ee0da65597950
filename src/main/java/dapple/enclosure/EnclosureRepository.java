package dapple.enclosure;

import jakarta.persistence.LockModeType;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Lock;
import org.springframework.data.jpa.repository.Query;

interface EnclosureRepository extends JpaRepository<Enclosure, Long> {
    String FACTS = "select new dapple.enclosure.EnclosureFacts(e.id, e.code, r.id, r.name, e.size, e.retiredAt, "
            + "e.front, e.reachKind, e.reachMetres)"
            + " from Enclosure e join e.room r ";

    String TODAY = "select e as enclosure, o as plannedOff, p as point from Enclosure e join fetch e.room r "
            + "left join PlannedOff o on o.enclosureId = e.id "
            + "and o.calledOffAt is null and o.fromAt <= :at and (o.toAt is null or o.toAt > :at) "
            + "left join MeasuringPoint p on p.enclosureId = e.id and p.retiredAt is null left join fetch p.quantities "
            + "left join fetch p.serves left join fetch p.servesAnimals ";

    String ORDER = "order by r.walkingOrder, r.id, e.walkingOrder, e.id";

    @Query(FACTS + "where e.siteId = :siteId and e.retiredAt is null " + ORDER)
    List<EnclosureFacts> inUse(long siteId);

    /** With what was planned for its lamps at an instant, and its points in use. */
    @Query(TODAY + "where e.siteId = :siteId and e.retiredAt is null " + ORDER + ", p.walkingOrder, p.id")
    List<EnclosureToday.Row> inUseAt(long siteId, Instant at);

    /** The same of one, in use or retired. */
    @Query(TODAY + "where e.siteId = :siteId and e.id = :id order by p.walkingOrder, p.id")
    List<EnclosureToday.Row> at(long siteId, long id, Instant at);

    @Query(FACTS + "where e.siteId = :siteId " + ORDER)
    List<EnclosureFacts> all(long siteId);

    @Query(FACTS + "where e.siteId = :siteId and e.id = :id")
    Optional<EnclosureFacts> findFacts(long siteId, long id);

    @Query("select e from Enclosure e join fetch e.room where e.siteId = :siteId and e.id = :id")
    Optional<Enclosure> findAtSite(long siteId, long id);

    /** Locked until the end of the transaction: what must not overlap changes one at a time. */
    @Lock(LockModeType.PESSIMISTIC_WRITE)
    @Query("select e from Enclosure e where e.siteId = :siteId and e.id = :id")
    Optional<Enclosure> lockAtSite(long siteId, long id);

    @Query("select max(e.walkingOrder) from Enclosure e where e.siteId = :siteId and e.room.id = :roomId")
    Optional<Integer> lastInRoom(long siteId, long roomId);

    @Query(
            "select count(e) > 0 from Enclosure e where e.siteId = :siteId and lower(e.code) = lower(:code) and e.id <> :except")
    boolean isTaken(long siteId, String code, long except);
}
