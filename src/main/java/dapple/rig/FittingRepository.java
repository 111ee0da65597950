package dapple.rig;

import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface FittingRepository extends JpaRepository<Fitting, Long> {
    String WITH_CHANGES =
            "select f from Fitting f join fetch f.begun left join fetch f.ended e left join fetch f.circuit ";
    String IN_FORCE = " and f.fromAt <= :at and (f.toAt is null or f.toAt > :at) order by f.id";

    @Query("select f from Fitting f where f.siteId = :siteId and f.enclosureId = :enclosureId and f.id = :id")
    Optional<Fitting> find(long siteId, long enclosureId, long id);

    @Query("select f from Fitting f where f.openLampId = :lampId")
    Optional<Fitting> open(long lampId);

    /** The fittings of lamps that hang somewhere. */
    @Query("select f from Fitting f where f.siteId = :siteId and f.openLampId is not null order by f.id")
    List<Fitting> openAtSite(long siteId);

    /** Where the lamps of a site hang. */
    @Query("select new dapple.rig.LampPlace(f.lampId, f.id, e.id, e.code, f.place) "
            + "from Fitting f join Enclosure e on e.id = f.enclosureId "
            + "where f.siteId = :siteId and f.openLampId is not null order by f.id")
    List<LampPlace> places(long siteId);

    /** Where one lamp hangs, if it does. */
    @Query("select new dapple.rig.LampPlace(f.lampId, f.id, e.id, e.code, f.place) "
            + "from Fitting f join Enclosure e on e.id = f.enclosureId "
            + "where f.siteId = :siteId and f.openLampId = :lampId")
    Optional<LampPlace> place(long siteId, long lampId);

    /** The fittings of a lamp that reach beyond an instant, oldest first. */
    @Query("select f from Fitting f where f.lampId = :lampId and (f.toAt is null or f.toAt > :at) order by f.fromAt")
    List<Fitting> beyond(long lampId, Instant at);

    @Query(WITH_CHANGES + "where f.siteId = :siteId and f.lampId = :lampId order by f.fromAt")
    List<Fitting> ofLamp(long siteId, long lampId);

    @Query("select f from Fitting f where f.siteId = :siteId and f.lampId in :lampIds order by f.fromAt, f.id")
    List<Fitting> ofLamps(long siteId, Collection<Long> lampIds);

    @Query(WITH_CHANGES + "where f.siteId = :siteId order by f.fromAt, f.id")
    List<Fitting> all(long siteId);

    @Query(WITH_CHANGES + "where f.siteId = :siteId and f.enclosureId = :enclosureId" + IN_FORCE)
    List<Fitting> inEnclosure(long siteId, long enclosureId, Instant at);

    @Query(WITH_CHANGES + "where f.siteId = :siteId" + IN_FORCE)
    List<Fitting> atSite(long siteId, Instant at);

    /** What held at an instant, and what had ended by then without anybody having said so. */
    @Query(WITH_CHANGES + "where f.siteId = :siteId and f.enclosureId = :enclosureId and f.fromAt <= :at "
            + "and (f.toAt is null or f.toAt > :at or e.recordedAt > :at) order by f.id")
    List<Fitting> onRecord(long siteId, long enclosureId, Instant at);
    /** What hung in some enclosures at any time in [from, to), with what kind of lamp it is. */
    @Query("""
            select new dapple.rig.FittedLamp(f.enclosureId, l.tag, m.lampClass, f.place, f.timer,
            f.fromAt, f.toAt, f.begun.id, f.ended.id)
            from Fitting f join Lamp l on l.id = f.lampId join LampModel m on m.id = l.lampModelId
            where f.siteId = :siteId and f.enclosureId in :enclosureIds
            and f.fromAt < :to and (f.toAt is null or f.toAt > :from) order by f.fromAt, l.tag""")
    List<FittedLamp> ofEnclosures(long siteId, Collection<Long> enclosureIds, Instant from, Instant to);
}
