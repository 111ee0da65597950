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

    /** The newest of each meter and kind. */
    @Query("""
            select c from MeterCheck c where c.siteId = :siteId
            and not exists (select 1 from MeterCheck n where n.meterId = c.meterId and n.kind = c.kind
            and (n.checkedAt > c.checkedAt or (n.checkedAt = c.checkedAt and n.id > c.id)))""")
    List<MeterCheck> newest(long siteId);
}
