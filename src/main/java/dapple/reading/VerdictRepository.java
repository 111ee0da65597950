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

    /** What is said now of all readings of a site whose numbers lie in a range, both ends included; by their index, not by the site's. */
    @Query(HistoryVerdict.SELECT + "where d.siteId + 0 = :siteId and d.readingId between :first and :last "
            + "and d.replacedAt is null order by d.readingId, d.id")
    List<HistoryVerdict> standingBetween(long siteId, long first, long last);

    /** What is said now of some readings. */
    @Query(HistoryVerdict.SELECT
            + "where d.readingId in :readingIds and d.replacedAt is null order by d.readingId, d.id")
    List<HistoryVerdict> standingOf(Collection<Long> readingIds);
}
