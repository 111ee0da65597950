package dapple.comparison;

import jakarta.persistence.LockModeType;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.domain.Limit;
import org.springframework.data.jpa.repository.Lock;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface ComparisonRepository extends Repository<Comparison, Long> {
    Comparison saveAndFlush(Comparison comparison);

    Optional<Comparison> findByEntryKey(UUID entryKey);

    @Query("select c from Comparison c where c.siteId = :siteId and c.id = :id")
    Optional<Comparison> findAtSite(long siteId, long id);

    /** Held for the rest of the transaction. */
    @Lock(LockModeType.PESSIMISTIC_WRITE)
    @Query("select c from Comparison c where c.siteId = :siteId and c.id = :id")
    Optional<Comparison> lockAtSite(long siteId, long id);

    /** Under way with a point among its own; held for the rest of the transaction, so that of two readings the last ends it. */
    @Lock(LockModeType.PESSIMISTIC_WRITE)
    @Query("select c from Comparison c where c.openQuantity is not null and :pointId member of c.pointIds")
    List<Comparison> lockUnderWayAt(long pointId);

    @Query("select c from Comparison c where c.siteId = :siteId order by c.begunAt desc, c.id desc")
    List<Comparison> newestFirst(long siteId, Limit limit);
}
