package dapple.practice;

import java.util.List;
import java.util.UUID;
import org.springframework.data.domain.Limit;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface MeterCheckRepository extends Repository<MeterCheck, Long> {
    MeterCheck saveAndFlush(MeterCheck check);

    boolean existsByEntryKey(UUID entryKey);

    @Query("""
            select c from MeterCheck c where c.siteId = :siteId and c.meterId = :meterId
            order by c.checkedAt desc, c.id desc""")
    List<MeterCheck> ofMeter(long siteId, long meterId, Limit limit);
}
