package dapple.reading;

import java.util.Collection;
import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface VerdictRepository extends JpaRepository<Verdict, Long> {
    @Query("select d from Verdict d where d.readingId = :readingId and d.replacedAt is null order by d.id")
    List<Verdict> current(long readingId);

    /** Everything that was ever said of some readings, oldest first. */
    @Query(HistoryVerdict.SELECT + "where d.readingId in :readingIds order by d.id")
    List<HistoryVerdict> ofReadings(Collection<Long> readingIds);
}
