package dapple.practice;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.domain.Limit;
import org.springframework.data.jpa.repository.Modifying;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface MeterEventRepository extends Repository<MeterEvent, Long> {
    MeterEvent saveAndFlush(MeterEvent event);

    boolean existsByEntryKey(UUID entryKey);

    @Query("""
            select e from MeterEvent e where e.siteId = :siteId and e.meterId = :meterId
            order by e.happenedAt desc, e.id desc""")
    List<MeterEvent> ofMeter(long siteId, long meterId, Limit limit);

    @Query("select e from MeterEvent e where e.siteId = :siteId and e.meterId = :meterId and e.id = :id")
    Optional<MeterEvent> findOfMeter(long siteId, long meterId, long id);

    /** How many were withdrawn: none, if somebody was quicker. */
    @Modifying(clearAutomatically = true)
    @Query("""
            update MeterEvent e set e.withdrawnAt = :at, e.withdrawnBy = :personId, e.withdrawalReason = :reason
            where e.id = :id and e.withdrawnAt is null""")
    int withdraw(long id, Instant at, long personId, String reason);
}
