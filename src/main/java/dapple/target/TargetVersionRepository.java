package dapple.target;

import java.time.Instant;
import java.util.Collection;
import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface TargetVersionRepository extends JpaRepository<TargetVersion, Long> {
    @Query("select count(t) from TargetVersion t where t.speciesId = :speciesId")
    int countOf(long speciesId);

    @Query("""
            select distinct t from TargetVersion t join fetch t.limits
            where t.siteId = :siteId and t.speciesId in :speciesIds and t.approvedAt =
              (select max(n.approvedAt) from TargetVersion n where n.speciesId = t.speciesId and n.approvedAt <= :at)
            order by t.number""")
    List<TargetVersion> inForce(long siteId, Collection<Long> speciesIds, Instant at);

    @Query("select distinct t from TargetVersion t join fetch t.limits where t.siteId = :siteId and t.id in :ids")
    List<TargetVersion> findAllAtSite(long siteId, Collection<Long> ids);
}
