package dapple.enclosure;

import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.springframework.data.domain.Limit;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface PlannedOffRepository extends JpaRepository<PlannedOff, Long> {
    @Query("""
            select count(o) > 0 from PlannedOff o where o.siteId = :siteId and o.enclosureId = :enclosureId
            and o.calledOffAt is null and o.fromAt <= :at and (o.toAt is null or o.toAt > :at)""")
    boolean isOff(long siteId, long enclosureId, Instant at);

    @Query("""
            select o from PlannedOff o where o.enclosureId = :enclosureId and o.calledOffAt is null
            and o.fromAt < :to and (o.toAt is null or o.toAt > :from) order by o.fromAt""")
    List<PlannedOff> overlapping(long enclosureId, Instant from, Instant to);

    @Query("""
            select o from PlannedOff o where o.siteId = :siteId and o.enclosureId in :enclosureIds
            and o.calledOffAt is null and o.fromAt < :to and (o.toAt is null or o.toAt > :from)
            order by o.fromAt, o.id""")
    List<PlannedOff> ofEnclosures(long siteId, Collection<Long> enclosureIds, Instant from, Instant to);

    @Query("""
            select o from PlannedOff o where o.siteId = :siteId and o.enclosureId = :enclosureId
            order by o.fromAt desc, o.id desc""")
    List<PlannedOff> newestFirst(long siteId, long enclosureId, Limit limit);

    @Query("select o from PlannedOff o where o.siteId = :siteId and o.enclosureId = :enclosureId and o.id = :id")
    Optional<PlannedOff> findInEnclosure(long siteId, long enclosureId, long id);

    /** Those that held at an instant, with those that were called off only after it. */
    @Query("""
            select o from PlannedOff o where o.siteId = :siteId and o.enclosureId = :enclosureId
            and (o.calledOffAt is null or o.calledOffAt > :at)
            and o.fromAt <= :at and (o.toAt is null or o.toAt > :at) order by o.fromAt, o.id""")
    List<PlannedOff> onRecord(long siteId, long enclosureId, Instant at);

    @Query("""
            select o.fromAt from PlannedOff o
            where o.siteId = :siteId and o.enclosureId = :enclosureId and o.calledOffAt is null
            union select o.toAt from PlannedOff o where o.siteId = :siteId and o.enclosureId = :enclosureId
            and o.calledOffAt is null and o.toAt is not null""")
    List<Instant> turns(long siteId, long enclosureId);
}
