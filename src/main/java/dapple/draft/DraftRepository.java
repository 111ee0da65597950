package dapple.draft;

import java.util.List;
import java.util.Optional;
import org.springframework.data.domain.Limit;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface DraftRepository extends JpaRepository<Draft, Long> {
    @Query("select d from Draft d where d.siteId = :siteId and d.enclosureId = :enclosureId and d.id = :id")
    Optional<Draft> find(long siteId, long enclosureId, long id);

    @Query("""
            select d from Draft d where d.siteId = :siteId and d.enclosureId = :enclosureId
            order by case when d.closedAt is null then 0 else 1 end, d.changedAt desc, d.id desc""")
    List<Draft> openFirst(long siteId, long enclosureId, Limit limit);

    @Query("""
            select count(d) > 0 from Draft d where d.siteId = :siteId and d.enclosureId = :enclosureId
            and lower(d.name) = lower(:name) and d.id <> :except""")
    boolean isTaken(long siteId, long enclosureId, String name, long except);
}
