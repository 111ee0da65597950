package dapple.reading;

import jakarta.persistence.LockModeType;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.domain.Limit;
import org.springframework.data.jpa.repository.Lock;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface VisitRepository extends Repository<Visit, Long> {
    String HOMES = "(select s.enclosureId from Stay s join s.animal a "
            + "where a.siteId = :siteId and a.speciesId = :speciesId and s.withdrawnAt is null) ";

    Visit saveAndFlush(Visit visit);

    /** The visit, locked until the end of the transaction: its readings are judged together, one writer at a time. */
    @Lock(LockModeType.PESSIMISTIC_WRITE)
    @Query("select v from Visit v where v.entryKey = :key")
    Optional<Visit> lockByKey(UUID key);

    @Lock(LockModeType.PESSIMISTIC_WRITE)
    @Query("select v from Visit v where v.id = :id")
    Optional<Visit> lockById(long id);

    @Query("select v from Visit v where v.siteId = :siteId and v.entryKey = :key")
    Optional<Visit> findByKey(long siteId, UUID key);

    @Query("select v from Visit v where v.siteId = :siteId and v.id = :id")
    Optional<Visit> findAtSite(long siteId, long id);

    /** Visits of an enclosure after one of them, with a reading taken at or after an instant. */
    @Query("""
            select v.id from Visit v where v.siteId = :siteId and v.enclosureId = :enclosureId and v.id > :after
            and exists (select 1 from Reading r where r.visit = v and r.takenAt >= :since) order by v.id""")
    List<Long> ofEnclosureSince(long siteId, long enclosureId, Instant since, long after, Limit limit);

    /** Visits after one of them in which a meter was read at or after an instant. */
    @Query("""
            select distinct v.id from Reading r join r.visit v where r.siteId = :siteId and r.meterId = :meterId
            and r.takenAt >= :since and v.id > :after order by v.id""")
    List<Long> ofMeterSince(long siteId, long meterId, Instant since, long after, Limit limit);

    /** Visits after one of them of enclosures in which a species lives or lived, with a reading taken at or after an instant. */
    @Query("select v.id from Visit v where v.siteId = :siteId and v.id > :after and v.enclosureId in " + HOMES
            + "and exists (select 1 from Reading r where r.visit = v and r.takenAt >= :since) order by v.id")
    List<Long> ofSpeciesSince(long siteId, long speciesId, Instant since, long after, Limit limit);

    /** Visits with the newest reading of a point in such an enclosure. */
    @Query("select distinct v.id from LatestReading l join Reading r on r.id = l.readingId join r.visit v "
            + "where l.siteId = :siteId and v.enclosureId in " + HOMES + "order by v.id")
    List<Long> newestOfSpecies(long siteId, long speciesId);
}
