package dapple.practice;

import java.util.List;
import java.util.UUID;
import org.springframework.data.domain.Limit;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface MeterEventRepository extends Repository<MeterEvent, Long> {
    MeterEvent saveAndFlush(MeterEvent event);

    boolean existsByEntryKey(UUID entryKey);

    @Query("""
            select e from MeterEvent e where e.siteId = :siteId and e.meterId = :meterId
            order by e.happenedAt desc, e.id desc""")
    List<MeterEvent> ofMeter(long siteId, long meterId, Limit limit);
}
