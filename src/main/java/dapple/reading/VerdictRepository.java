package dapple.reading;

import java.util.Collection;
import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface VerdictRepository extends JpaRepository<Verdict, Long> {
    /** What is said now of the readings of a visit. */
    @Query("select d from Verdict d join Reading r on r.id = d.readingId "
            + "where r.visit.id = :visitId and d.replacedAt is null order by d.id")
    List<Verdict> currentOfVisit(long visitId);

    /** Everything that was ever said of some readings, oldest first. */
    @Query(HistoryVerdict.SELECT + "where d.readingId in :readingIds order by d.id")
    List<HistoryVerdict> ofReadings(Collection<Long> readingIds);
}
