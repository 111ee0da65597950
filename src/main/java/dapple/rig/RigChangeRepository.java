package dapple.rig;

import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.domain.Limit;
import org.springframework.data.domain.Pageable;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface RigChangeRepository extends JpaRepository<RigChange, Long> {
    @Query("select c from RigChange c where c.siteId = :siteId and c.entryKey = :key")
    Optional<RigChange> findByKey(long siteId, UUID key);

    /** The change recorded last, whenever it happened. */
    @Query("select max(c.id) from RigChange c where c.siteId = :siteId and c.enclosureId = :enclosureId")
    Optional<Long> lastRecorded(long siteId, long enclosureId);

    @Query("""
            select c from RigChange c where c.siteId = :siteId and c.enclosureId = :enclosureId and c.atInstant <= :at
            order by c.atInstant desc, c.id desc""")
    List<RigChange> until(long siteId, long enclosureId, Instant at, Limit limit);

    /** The newest change until an instant, and before it the newest that a reading can tell, if that is another. */
    @Query("""
            select c from RigChange c where c.siteId = :siteId and c.enclosureId = :enclosureId and c.atInstant <= :at
            and not exists (select 1 from RigChange d where d.enclosureId = c.enclosureId and d.atInstant <= :at
            and (c.kind = dapple.rig.RigChangeKind.TIMER_CHANGED or d.kind <> dapple.rig.RigChangeKind.TIMER_CHANGED)
            and (d.atInstant > c.atInstant or (d.atInstant = c.atInstant and d.id > c.id)))
            order by c.atInstant desc, c.id desc""")
    List<RigChange> newestUntil(long siteId, long enclosureId, Instant at);

    @Query("""
            select c from RigChange c where c.siteId = :siteId and c.enclosureId = :enclosureId
            order by c.atInstant desc, c.id desc""")
    List<RigChange> newestFirst(long siteId, long enclosureId, Pageable page);

    @Query("""
            select c from RigChange c where c.siteId = :siteId and c.enclosureId in :enclosureIds
            and c.atInstant >= :from and c.atInstant < :to order by c.atInstant, c.id""")
    List<RigChange> ofEnclosures(long siteId, Collection<Long> enclosureIds, Instant from, Instant to);

    /** The changes of an enclosure that a reading can tell, newest first: all but those of timers. */
    @Query("""
            select c from RigChange c where c.siteId = :siteId and c.enclosureId = :enclosureId
            and c.kind <> dapple.rig.RigChangeKind.TIMER_CHANGED order by c.atInstant desc, c.id desc""")
    List<RigChange> ofLight(long siteId, long enclosureId, Limit limit);

    /** The same as they were at an instant. */
    @Query("""
            select c from RigChange c where c.siteId = :siteId and c.enclosureId = :enclosureId and c.atInstant <= :at
            and c.kind <> dapple.rig.RigChangeKind.TIMER_CHANGED order by c.atInstant desc, c.id desc""")
    List<RigChange> ofLightUntil(long siteId, long enclosureId, Instant at, Limit limit);

    /** The newest change of each enclosure that a reading can tell. */
    @Query("""
            select c from RigChange c where c.siteId = :siteId
            and c.kind <> dapple.rig.RigChangeKind.TIMER_CHANGED and not exists (select 1 from RigChange d
            where d.enclosureId = c.enclosureId and d.kind <> dapple.rig.RigChangeKind.TIMER_CHANGED
            and (d.atInstant > c.atInstant or (d.atInstant = c.atInstant and d.id > c.id)))""")
    List<RigChange> newestOfLightAtSite(long siteId);

    @Query("select count(c) from RigChange c where c.siteId = :siteId and c.enclosureId = :enclosureId")
    long count(long siteId, long enclosureId);

    /** The newest change of each enclosure. */
    @Query("""
            select c from RigChange c where c.siteId = :siteId and not exists (select 1 from RigChange d
            where d.enclosureId = c.enclosureId
            and (d.atInstant > c.atInstant or (d.atInstant = c.atInstant and d.id > c.id)))""")
    List<RigChange> newestAtSite(long siteId);

    @Query("select distinct c.atInstant from RigChange c where c.siteId = :siteId and c.enclosureId = :enclosureId")
    List<Instant> turns(long siteId, long enclosureId);
}
