package dapple.reading;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface VisitCoverRepository extends Repository<VisitCover, Long> {
    VisitCover saveAndFlush(VisitCover cover);

    boolean existsByEntryKey(UUID key);

    @Query("""
            select c from VisitCover c join Visit v on v.id = c.visitId
            where c.siteId = :siteId and v.entryKey = :visitKey
            and c.id = (select max(d.id) from VisitCover d where d.visitId = v.id)""")
    Optional<VisitCover> ofVisit(long siteId, UUID visitKey);

    @Query("""
            select new dapple.reading.VisitCoverRepository$AtReading(r.id, c.cover)
            from VisitCover c join Reading r on r.visit.id = c.visitId where r.siteId = :siteId and r.id in :readingIds
            and c.id = (select max(d.id) from VisitCover d where d.visitId = c.visitId)""")
    List<AtReading> atReadings(long siteId, Collection<Long> readingIds);

    /** How the cover was when a reading was taken. */
    record AtReading(long readingId, CoverSaid cover) {}
}
