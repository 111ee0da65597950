package dapple.review;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

/** Decisions are added, never changed. */
interface DecisionRepository extends Repository<Decision, Long> {
    Decision saveAndFlush(Decision decision);

    boolean existsByEntryKey(UUID entryKey);

    @Query("select d from Decision d where d.siteId = :siteId and d.madeAt >= :since order by d.madeAt, d.id")
    List<Decision> since(long siteId, Instant since);

    @Query("select d from Decision d where d.siteId = :siteId and d.enclosureId = :enclosureId order by d.madeAt, d.id")
    List<Decision> of(long siteId, long enclosureId);
}
