package dapple.reading;

import java.util.List;
import java.util.Set;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface RejudgingDueRepository extends JpaRepository<RejudgingDue, Long> {
    @Query("select d.id from RejudgingDue d where d.finishedAt is null order by d.id")
    List<Long> unfinished();

    @Query(
            "select d.enclosureId from RejudgingDue d where d.siteId = :siteId and d.enclosureId is not null and d.finishedAt is null")
    Set<Long> enclosuresUnfinished(long siteId);
}
