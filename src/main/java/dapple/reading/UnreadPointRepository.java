package dapple.reading;

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
}
