package dapple.target;

import jakarta.persistence.Tuple;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface TargetVersionRepository extends JpaRepository<TargetVersion, Long> {
    @Query("select max(t.number) from TargetVersion t where t.speciesId = :speciesId")
    Optional<Integer> lastNumber(long speciesId);

    @Query("""
            select distinct t from TargetVersion t join fetch t.limits
            where t.siteId = :siteId and t.speciesId in :speciesIds and t.inForceFrom =
              (select max(n.inForceFrom) from TargetVersion n where n.speciesId = t.speciesId and n.inForceFrom <= :at)
            order by t.number""")
    List<TargetVersion> inForce(long siteId, Collection<Long> speciesIds, Instant at);

    @Query("select distinct t from TargetVersion t join fetch t.limits where t.siteId = :siteId and t.id in :ids")
    List<TargetVersion> findAllAtSite(long siteId, Collection<Long> ids);

    @Query("""
            select distinct t from TargetVersion t join fetch t.limits where t.siteId = :siteId
            and (t.id in :ids or t.speciesId in :speciesIds and t.number =
              (select max(n.number) from TargetVersion n where n.speciesId = t.speciesId))""")
    List<TargetVersion> withNewest(long siteId, Collection<Long> ids, Collection<Long> speciesIds);

    @Query("""
            select distinct t from TargetVersion t join fetch t.limits where t.siteId = :siteId and t.number =
              (select max(n.number) from TargetVersion n where n.speciesId = t.speciesId)""")
    List<TargetVersion> newest(long siteId);

    @Query("select distinct t from TargetVersion t join fetch t.limits where t.siteId = :siteId"
            + " and t.speciesId = :speciesId order by t.number desc")
    List<TargetVersion> newestFirst(long siteId, long speciesId);

    /** Fetches the day lengths of versions that are at hand already. */
    @Query("select distinct t from TargetVersion t left join fetch t.dayLengths where t in :versions")
    List<TargetVersion> withDayLengths(Collection<TargetVersion> versions);

    /** The versions in force with the hours of light of one month, null where a version has no photoperiod. */
    @Query("""
            select t as version, d.lightHours as hours from TargetVersion t join fetch t.limits
            left join DayLength d on d.version = t and d.monthNumber = :month
            where t.siteId = :siteId and t.speciesId in :speciesIds and t.inForceFrom =
              (select max(n.inForceFrom) from TargetVersion n where n.speciesId = t.speciesId and n.inForceFrom <= :at)
            order by t.number""")
    List<Tuple> inForceInMonth(long siteId, Collection<Long> speciesIds, Instant at, int month);

    @Query("select distinct t.inForceFrom from TargetVersion t where t.siteId = :siteId")
    List<Instant> turns(long siteId);
}
