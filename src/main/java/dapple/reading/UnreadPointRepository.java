package dapple.reading;

import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface UnreadPointRepository extends Repository<UnreadPoint, Long> {
    UnreadPoint saveAndFlush(UnreadPoint unread);

    Optional<UnreadPoint> findByEntryKey(UUID key);

    @Query(
            "select u from UnreadPoint u join u.visit v where u.siteId = :siteId and v.entryKey = :visitKey order by u.id")
    List<UnreadPoint> ofVisit(long siteId, UUID visitKey);

    /** What was noted at points over [from, to). */
    @Query("""
            select new dapple.reading.StepTaken(u.pointId, u.quantity, u.notedAt, u.outcome) from UnreadPoint u
            where u.siteId = :siteId and u.pointId in :points and u.notedAt >= :from and u.notedAt < :to""")
    List<StepTaken> noted(long siteId, Collection<Long> points, Instant from, Instant to);
}
