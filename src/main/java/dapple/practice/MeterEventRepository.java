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

    /** The newest of each meter that says whether it is at hand. */
    @Query("""
            select e from MeterEvent e where e.siteId = :siteId and e.kind <> dapple.practice.MeterEventKind.DROPPED
            and not exists (select 1 from MeterEvent n where n.meterId = e.meterId
            and n.kind <> dapple.practice.MeterEventKind.DROPPED
            and (n.happenedAt > e.happenedAt or (n.happenedAt = e.happenedAt and n.id > e.id)))""")
    List<MeterEvent> whereabouts(long siteId);
}
