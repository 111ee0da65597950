package dapple.reading;

import java.util.Collection;
import java.util.List;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

/** Repeats are added and read. There is no way here to change or delete one. */
interface ReadingRepeatRepository extends Repository<ReadingRepeat, Long> {
    List<ReadingRepeat> saveAllAndFlush(Iterable<ReadingRepeat> repeats);

    @Query("""
            select p from ReadingRepeat p join Reading r on r.id = p.readingId
            where r.visit.id = :visitId order by p.readingId, p.number""")
    List<ReadingRepeat> ofVisit(long visitId);

    @Query("""
            select p from ReadingRepeat p
            where p.siteId = :siteId and p.readingId in :readingIds order by p.readingId, p.number""")
    List<ReadingRepeat> ofReadings(long siteId, Collection<Long> readingIds);
}
